package stackside.model;

/** Something that plugs in and can be kept as a spare. */
public sealed interface Accessory extends Thing permits PatientPart, Cable {}
