/** Arc energy, heat input and net heat: three different things with three names. */
package org.counterpull.arc;
