package org.counterpull.weldment;

import java.util.Optional;

/**
 * A rule of the file's own: one thing is done before another.
 *
 * @param earlier a run, a joint, a part, a feature or a fixture
 * @param later likewise
 * @param reason in the user's words
 */
public record Before(String earlier, String later, Optional<String> reason) {}
