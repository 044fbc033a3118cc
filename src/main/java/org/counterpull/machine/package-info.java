/**
 * Whether a machine can weld a joint: five gates (electrical, fusion, chill, process, layering),
 * each with its figures, and one verdict with preparation, passes, preheat and waits.
 *
 * <p>Sources: AWS D1.1 for the chill and process gates, published settings (common practice, no
 * source) for the fusion gate, which is a fit to them and not a validation. Limits: flat, clean,
 * unalloyed steel; a fused and etched test piece of one's own machine beats every figure here.
 */
package org.counterpull.machine;
