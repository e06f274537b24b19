/**
 * The line: cables, plugs and terminators in, and what reaches each receiver out.
 *
 * What is modelled. Each conductor (common, data minus, data plus) is a net of its own through cables and through the two
 * sockets of a fixture, which are wired together with power or without; so an open wire or a bad contact cuts off what lies
 * past it and nothing else, swaps cancel in pairs, and a break in a closed ring is bridged from the other side. A receiver
 * hears the one drive (talker, or output of a box) that its pair is joined to: by both wires rightly, by both the wrong way
 * round not at all, by one wire half, worse where a terminator hangs on the loose wire. Joined to more than one drive, by
 * any wire, it hears garbage: the nearer talker does not win. An open common matters only where the two ends do not both
 * find earth through mains; desks and splitters always do. Then come the slow harms, each a share of frames lost, as if
 * independent: an end past its last terminator that runs on too long (loads count as metres, since they slow the wave); the
 * way too long, or too much of it microphone cable, for this receiver; too many loads, too many terminators, plugs sharing a
 * socket, a closed ring, for all who share the pair. Where a pair is broken, the near part has lost whatever terminator lay
 * past the break, which shows only on a long line. A splitter with power sends on what its input hears, spoiled frames and
 * all, into fresh lines; its input ends its line with a terminator of its own.
 *
 * What is left out, why that does no harm, and where real kit differs. There are no volts and no waveforms: a hand at a
 * gig can see only that a lamp obeys, flickers or does not, and that is what is worked out. So shares of frames are sizes of
 * our own, chosen for their order; real lines fail by steps and by luck, and one receiver on a bad line may be well while
 * its neighbour is not. Shorts between wires (but for a ring crossed an odd number of times), leaks, hum and
 * wireless links are left out: their repair, change the cable, is that of an open pair. The second pair is left out, for hardly
 * anything uses it, and so is talking back up the line. Some splitters float their commons, some fixtures lift theirs from
 * earth, some drop the loop-through with the power or end the line by themselves, some transmitters win a
 * collision by force: here none does. A desk output that is off, or a splitter with nothing at its input, lets go
 * of the line; some real ones hold it.
 *
 * The numbers, with their sources, are in `limits.ts`:
 *
 * | limit | value |
 * |---|---|
 * | unitLoads | 32 |
 * | terminators | 2 |
 * | dataMetres | 300 |
 * | dataMetresHopeless | 1200 |
 * | openMetres | 66 |
 * | openMetresWorst | 400 |
 * | metresPerLoad | 1 |
 * | microphoneMetres | 30 |
 * | microphoneMetresWorst | 200 |
 * | unitLoadsWorst | 64 |
 */
export { deskSource, leaderSource, lineBox } from './devices.ts';
export { type Harmless, harmless } from './harmless.ts';
export { receptions } from './hear.ts';
export { LINE_LIMITS, LINE_RATES } from './limits.ts';
export { joinedTo } from './near.ts';
export { segments } from './segments.ts';
export type { Box, DataSource, LineCause, Receiver, Reception, Segment, Wiring } from './types.ts';
