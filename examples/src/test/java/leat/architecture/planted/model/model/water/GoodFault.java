package leat.architecture.planted.model.model.water;

public class GoodFault extends RuntimeException {

    private static final long serialVersionUID = 1;

    public GoodFault(String message) {
        super(message);
    }
}
