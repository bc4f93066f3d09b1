package leat.architecture.planted.files.model.water;

import java.io.Reader;

record BadSource(Reader reader) {}
