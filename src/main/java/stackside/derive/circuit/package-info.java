/**
 * The circuit of machine, sockets, cables, instrument, neutral electrode and pedals, and what
 * becomes of the current when a single thing in it is wrong: where it goes, what is seen and heard,
 * and how bad that is. Start from {@link stackside.derive.circuit.Circuits}.
 *
 * <p>An approved answer is set up with everything right ({@link stackside.derive.circuit.SetUp}),
 * one thing is made wrong in it ({@link stackside.derive.circuit.Deviation}), each assigned pedal
 * is pressed ({@link stackside.derive.circuit.Activation}), and what comes of it is judged ({@link
 * stackside.derive.circuit.Pressing}). Which condition a fault makes is physics and stands here;
 * how a machine answers a condition is content. An answer that nobody knows is taken to be silent.
 *
 * <p><b>What a fault does to the state, by how the live socket is selected</b>
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
 * <p>Not to select the socket is a fault of its own where a button selects it and power-on selects
 * another; not to choose the stored program that selects it is a wrong program. Whatever selects: a
 * loose or broken way to the tip loses the instrument in hand. A machine that senses plugs finds a
 * loose one missing only if the plug itself has moved; contact can also be lost where the socket
 * does not feel it, so both are tried. A program in force by mistake is what was last read back
 * from that slot, else what an approved profile says of it, else unknown; all slots of which
 * nothing is known count together as one. "Plugged in last" is the ordinary case of a change of
 * instrument and back: the first plug never left its socket, so nothing selects it again.
 *
 * <p><b>What the machine meets</b>
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
 * <p>The neutral electrode matters to monopolar and argon modes only. Where several conditions
 * hold, the machine reports the first of: mains, foot switch, neutral, socket, argon, instrument.
 *
 * <p><b>What comes of it</b>, worst first, is {@link stackside.derive.circuit.OutcomeClass}. Partly
 * off unnoticed lets the right current through, crowded under what is left of the electrode; off
 * unnoticed leaves only stray ways back, so the instrument gets nothing that counts. A lamp that is
 * red or flashes, a message, or any tone but the usual one is noticeable. An alarm with output is
 * not blocked. A program that shows another name on the display is not taken to be noticed: the
 * display always shows some name.
 *
 * <p>May import what {@code derive} may.
 */
@NullMarked
package stackside.derive.circuit;

import org.jspecify.annotations.NullMarked;
