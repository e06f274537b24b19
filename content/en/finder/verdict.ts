import { locale } from '../locale/index.ts';
import { led } from './amounts.ts';

export const verdictWords = {
	because: {
		sure: (share: string) => `What you saw leaves ${share} for this.`,
		'no-check-left':
			'No check that can be done now tells these apart. Fix in this order; it’s the quickest on average.',
		mended: 'The complaint is gone.',
		unknown: 'Each cause I know is ruled out, by what you saw or by its own repair.',
	},
	title: 'The cause',
	titleFew: 'One of these',
	titleUnknown: 'None of what I know fits',
	titleMended: 'Fixed',
	was: 'It was',
	wasLikely: 'Most likely it was',
	others: (count: number) => locale.plural(count, 'Or one other', `Or one of ${count} others`),
	othersSay: 'The same fix clears these too, and nothing that was looked at tells them apart.',
	ordered: (at: number, of: number, title: string) => `${at} of ${of}: ${title}`,
	confirm: 'How to tell:',
	done: 'Done: the complaint is gone',
	still: 'Done: still there',
	lacks: (needs: string) => `You said there’s no ${needs}.`,
	disturbs: 'This disturbs the show. Wait for a moment when it may.',
	tape: 'Write on the tape',
	unknownWays: 'What now',
	unknownNext:
		'An answer may have been wrong. The walk so far is below: go back and look again at what you were least sure of.',
	/** What the answers have in common: what was off, what it looks like, and what was as it should be. */
	common: {
		odd: (seen: readonly string[]) =>
			`What was off: ${locale.longList(seen)}. Look for one thing that would do all of it.`,
		saw: (check: string, seen: string) => `“${led(check, ':')} ${seen}”`,
		like: (families: readonly string[]) => `It’s most like a fault of ${locale.list(families)}.`,
		fine: (checks: readonly string[]) =>
			`These were fine, so look there last: ${locale.longList(checks.map((check) => `“${check}”`))}.`,
		families: {
			power: 'the power (that’s for the electrician)',
			panel: 'what’s set on the panel',
			remote: 'the remote',
			line: 'the cables',
			desk: 'the desk',
			fixture: 'the fixture itself',
			light: 'what stands before the light',
		},
	},
	near: (places: string) => `What you saw points most to ${places}. Start there. It’s a place, not a cause.`,
	and: ' and ',
	halves:
		'Go by halves. Between the source and this fixture, put parts you know are good in place of one half, and look again. If all is right, the fault is in what you took out. If not, it’s in the other half. Then halve that.',
	halvesCare:
		'A swap at height is work for the competent person on site. So is a swap of anything on mains (in the US, it’s for the qualified person). In a show, ask the operator first. Local rules come first.',
	handOver:
		'No spare, or still no luck? Mark the fixture. Give it and the log below to whoever looks after the gear, or to a competent repairer. Sockets and mains wiring are for a competent electrician (in the US, a licensed electrician or a qualified person).',
	hinge: {
		none: 'I found no other fix, of those not tried yet, that hangs on one wrong answer. That doesn’t prove this one.',
		title: 'One wrong answer could have led here',
		says: (check: string, seen: string, name: string) =>
			`If “${led(check, ':')} ${seen}” was wrong, it could be ${name}.`,
		settle: (title: string, does: string) => `To settle it: ${led(title, '.')} ${does}`,
		settled: (there: string, here: string) => `“${there}” points to that one. “${here}” fits what’s said above.`,
		or: '” or “',
		again: 'No check that can be done now tells them apart. Look at that one again.',
	},
	asides: (count: number) => locale.plural(count, 'One check was set aside.', `${count} checks were set aside.`),
	bringBack: 'I can do them now',
	back: 'Back',
	counted: 'This verdict is counted on this device, and makes the finder look here a little sooner next time.',
	another: 'Look for another fault',
	notePlan: 'Note it on tonight’s rig',
	said: (title: string) => `Verdict. ${title}.`,
} as const;
