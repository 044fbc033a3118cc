/** Names that people type, and the known names that they may have meant. */
package org.counterpull.naming;
