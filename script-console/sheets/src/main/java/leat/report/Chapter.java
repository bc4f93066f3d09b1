package leat.report;

/** The parts of the page, in their order; the table of contents goes by them. */
enum Chapter {
    WATER("Water"),
    POWER("Power and control"),
    GROUND("Trenches and setting out"),
    MONEY("Materials and money"),
    WATERING("Watering"),
    WORK("The work");

    private final String title;

    Chapter(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }
}
