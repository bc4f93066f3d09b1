package leat.architecture.planted.cycles.calc.coverage;

import leat.architecture.planted.cycles.model.plan.BadPlan;

record GoodCoverage(BadPlan plan) {}
