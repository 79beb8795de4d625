package stackside.model;

import java.util.Optional;

/** The approved answer is not to do this here. */
public record NotApproved(Fact<String> instead, Optional<Fact<Role>> ask) implements Answer {}
