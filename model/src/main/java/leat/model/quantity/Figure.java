package leat.model.quantity;

/** What a line of a ledger gives or takes: a quantity, or a sum of money. */
public sealed interface Figure permits Quantity, Cost {

    /** The value in the SI unit of its dimension; of a sum of money, its amount in its own currency. */
    double si();
}
