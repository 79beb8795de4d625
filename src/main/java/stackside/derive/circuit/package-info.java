/**
 * The circuit of machine, sockets, cables, instrument, neutral electrode and pedals, and what
 * happens to the current when a single thing is wrong: where it goes, what is seen and heard, and
 * how bad that is. Start from {@link stackside.derive.circuit.Circuits}.
 *
 * <p>An approved answer is set up correctly ({@link stackside.derive.circuit.SetUp}), one thing in
 * it is made wrong ({@link stackside.derive.circuit.Deviation}), each assigned pedal is pressed
 * ({@link stackside.derive.circuit.Activation}), and the result is classified ({@link
 * stackside.derive.circuit.Pressing}). Which condition a fault causes is physics and is coded here.
 * How a machine responds to a condition is content. An unknown response is assumed to be silent.
 *
 * <p><b>What a fault does to the state, depending on how the live socket is selected</b>
 *
 * <pre>
 * fault               program, button,      plug                    nothing selects
 *                     foot switch
 * wrong socket        selected one stays    the other goes live,    works in any live socket of
 *                     live, and is empty    with its own program    the mode's kind; else empty
 * not selected        button: power-on's    cannot happen           cannot happen
 *                     is live, and empty
 * plug loose          selected one is open  selection falls back    live one is open
 *                                           to power-on, empty
 * loose, still felt   selected one is open  selected one is open    live one is open
 * cable broken        selected one is open  selected one is open    live one is open
 * other left in:
 *   approved socket   it is live, the one   it is live, the one     it is live, the one in
 *                     in hand is not        in hand is not          hand is not
 *   another socket    it is dead            plugged in last: it is  it is live beside the one in
 *                                           live, the one in hand   hand, if of the mode's kind
 *                                           is not
 * wrong program       where programs        selection stays         the mode's kind decides
 *                     select, its socket
 *                     goes live; else the
 *                     selection stays
 * wrong pedal         the other pedal's setting, or nothing where it is unassigned
 * </pre>
 *
 * <p>Failing to select the socket is a separate fault if a button selects it and power-on selects
 * another. Failing to choose the stored program that selects the socket counts as a wrong program.
 * However the socket is selected, a loose or broken path to the tip cuts off the instrument in
 * hand. A machine that senses plugs detects a loose one only if the plug itself has moved. Contact
 * can also be lost in a way that the socket does not sense, so both cases are simulated. The
 * content of a program that is active by mistake is taken from the last reading of its slot, or
 * else from an approved profile, or else is unknown. All slots about which nothing is known count
 * together as one. "Plugged in last" is the ordinary case of changing an instrument and changing
 * back: the first plug never left its socket, so nothing selects it again.
 *
 * <p><b>What the machine detects</b>
 *
 * <pre>
 * selected socket empty    the machine senses plugs and feels none in any socket it would make live
 * instrument circuit open  no whole way from a live socket to a tip; a monopolar instrument joins
 *                          only one pole of a bipolar socket, so that is open too
 * neutral circuit open     contact-quality monitor with a split electrode: off the skin, cable out
 *                          or broken; with an electrode in one piece, and with a continuity
 *                          monitor: cable out or broken only; without a monitor: never
 * neutral contact poor     contact-quality monitor with a split electrode: partly off the skin
 * foot switch missing, mains off, argon empty (where the pedal's mode is argon)
 * </pre>
 *
 * <p>The neutral electrode matters for monopolar and argon modes only. If several conditions apply,
 * the machine reports the first of: mains, foot switch, neutral, socket, argon, instrument.
 *
 * <p><b>The results</b>, worst first, are listed in {@link stackside.derive.circuit.OutcomeClass}.
 * If the electrode is partly off and nobody notices, the right current flows, but crowded under
 * what is left of the electrode. If it is off and nobody notices, only stray return paths are left,
 * so the instrument gets no significant current. A red or flashing lamp, a message, or an unusual
 * tone is noticeable. An alarm with output does not count as blocked. A program that shows another
 * name on the display is not assumed to be noticed, because the display always shows some name.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.circuit;

import org.jspecify.annotations.NullMarked;
