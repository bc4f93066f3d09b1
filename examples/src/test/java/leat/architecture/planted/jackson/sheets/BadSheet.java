package leat.architecture.planted.jackson.sheets;

import tools.jackson.core.JsonParser;

record BadSheet(JsonParser parser) {}
