package leat.architecture.planted.chance.calc.coverage;

import java.security.SecureRandom;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.random.RandomGenerator;

final class Chance {

    static double badMath() {
        return Math.random();
    }

    static Random badRandom() {
        return new Random();
    }

    static SplittableRandom badSplittable() {
        return new SplittableRandom();
    }

    static int badThreadLocal() {
        return ThreadLocalRandom.current().nextInt();
    }

    static Random badSecure() {
        return new SecureRandom();
    }

    static RandomGenerator badGenerator() {
        return RandomGenerator.getDefault();
    }

    static UUID badId() {
        return UUID.randomUUID();
    }

    static void badShuffle(List<String> cards) {
        Collections.shuffle(cards);
    }

    static Random goodRandom() {
        return new Random(7);
    }

    static void goodShuffle(List<String> cards) {
        Collections.shuffle(cards, new Random(7));
    }
}
