package org.counterpull.order;

/** What came of putting the work in order: an order, or the circle of rules that forbids one. */
public sealed interface OrderResult permits WorkOrder, OrderCycle {}
