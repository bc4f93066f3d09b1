package leat.architecture.planted.jackson.sheets;

import tools.jackson.databind.JsonNode;

record BadSheet(JsonNode node) {}
