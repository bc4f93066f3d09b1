package leat.architecture.planted.cycles.model.water;

import leat.architecture.planted.cycles.model.plan.BadPlan;

public record BadHead(BadPlan plan) {}
