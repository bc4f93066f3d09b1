package leat.architecture.planted.files.calc.coverage;

import java.io.StringReader;
import java.net.InetAddress;
import java.nio.file.Path;
import java.sql.Timestamp;
import java.util.logging.Logger;

final class Files {

    static boolean badStream(String text) {
        return new StringReader(text).markSupported();
    }

    static String badPath() {
        return Path.of("yard").toString();
    }

    static boolean badNetwork() {
        return InetAddress.getLoopbackAddress().isLoopbackAddress();
    }

    static int badDatabase(Timestamp when) {
        return when.getNanos();
    }

    static void badLogger() {
        Logger.getGlobal().info("done");
    }

    static void badOut() {
        System.out.println("done");
    }

    static void badErr() {
        System.err.println("done");
    }

    static boolean badIn() {
        return System.in == null;
    }

    @SuppressWarnings("CatchAndPrintStackTrace")
    static int badTrace(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException fault) {
            fault.printStackTrace();
            return 0;
        }
    }

    static int goodText(String text) {
        return text.strip().length();
    }
}
