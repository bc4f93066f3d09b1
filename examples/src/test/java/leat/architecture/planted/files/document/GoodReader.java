package leat.architecture.planted.files.document;

import java.io.Reader;

record GoodReader(Reader reader) {}
