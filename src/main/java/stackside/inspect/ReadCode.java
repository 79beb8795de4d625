package stackside.inspect;

/**
 * The QR code as a camera sees it.
 *
 * @param text what it says
 * @param box the symbol without its clear space
 * @param module the width of one module in millimetres
 * @param clear the least clear space round it, in modules
 * @param level its error correction: L, M, Q or H
 */
public record ReadCode(String text, Box box, double module, double clear, String level) {}
