package leat.report;

import leat.model.site.ExistingService;

/** Letters and words for lines that lie in the ground already. */
enum ServiceStyle {
    GAS(ExistingService.Kind.GAS, "G", "gas line"),
    POWER(ExistingService.Kind.POWER, "E", "power line"),
    DRINKING_WATER(ExistingService.Kind.DRINKING_WATER, "W", "drinking-water line"),
    SEWER(ExistingService.Kind.SEWER, "S", "sewer"),
    DRAIN(ExistingService.Kind.DRAIN, "R", "rain-water drain"),
    TELECOM(ExistingService.Kind.TELECOM, "T", "telecom line"),
    UNKNOWN(ExistingService.Kind.UNKNOWN, "?", "line of unknown kind");

    private final ExistingService.Kind kind;
    private final String letter;
    private final String label;

    ServiceStyle(ExistingService.Kind kind, String letter, String label) {
        this.kind = kind;
        this.letter = letter;
        this.label = label;
    }

    static ServiceStyle of(ExistingService.Kind kind) {
        for (ServiceStyle style : values()) {
            if (style.kind == kind) {
                return style;
            }
        }
        throw new AssertionError(kind);
    }

    String letter() {
        return letter;
    }

    String label() {
        return label;
    }
}
