package leat.calc.wiring;

import leat.calc.Progress;

public class Look {
    public static void main(String[] a) {
        var site = WiredYard.wired();
        var r = WiringReview.run(site, WiringReviewParameters.defaults(), Progress.NONE);
        r.circuits().forEach(System.out::println);
        r.cables().forEach(System.out::println);
        r.loads().forEach(System.out::println);
        r.conduits().forEach(System.out::println);
        System.out.println(r.covers());
        r.findings()
                .forEach(f -> System.out.println(
                        f.severity() + " " + f.rule().id() + " " + f.subject() + " " + f.measured() + " " + f.limit()));
        WiringReview.why(site, WiringReviewParameters.defaults(), new leat.model.id.OutletId("lawn"), "drop")
                .steps()
                .forEach(s -> System.out.println(s.text() + " | " + s.formula() + " | " + s.value()));
        WiringReview.why(site, WiringReviewParameters.defaults(), new leat.model.id.CircuitId("outlets"), "current")
                .steps()
                .forEach(s -> System.out.println(s.text() + " | " + s.formula() + " | " + s.value()));
    }
}
