package slipday.choice;

/**
 * A breeding value on the trait's own scale: what its offspring would be like on the whole, grown
 * beside the candidates and corrected like them.
 *
 * @param low the true value is above this in 9 cases of 10
 * @param high and below this in as many
 * @param accuracy correlation of the predicted difference from the candidates' mean with the true
 *     one, 0 to 1
 */
public record Predicted(double value, double low, double high, double accuracy) {}
