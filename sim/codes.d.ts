import type { From0, Length, NoIndex, NotAList, NotAmong, OutOfLimits, Shape } from '../shared/error/index.ts';

/** Codes of the errors thrown in `sim/`, and the facts of each: see `shared/error/codes.ts`. */
declare module '../shared/error/codes.ts' {
	interface ErrorFacts {
		'fault.unknown': { readonly trouble: 'no-such-fault'; readonly id: string };
		'fault.place': {
			readonly trouble: 'cannot-sit-there';
			readonly fault: string;
			readonly place: string;
			readonly detail: string;
		};

		'sequence.list': NotAList<SequenceList> | { readonly expected: 'problem'; readonly found: string };
		'sequence.lengths': Length<SequenceList | 'outcomes-of-suspects' | 'repair-seconds' | 'asked'>;
		'sequence.suspects': { readonly trouble: 'no-suspects' };
		'sequence.weight': OutOfLimits<'weight'> | From0<'weight'>;
		'sequence.weights':
			| { readonly trouble: 'weights-sum'; readonly found: string }
			| { readonly trouble: 'weight-below-0' };
		'sequence.cost': OutOfLimits<'wrong-end' | 'repair-seconds'> | From0<'cost'>;
		'sequence.outcomes':
			| { readonly trouble: 'too-many-outcomes'; readonly check: number; readonly limit: number }
			| { readonly expected: 'text-or-finite-number'; readonly found: string };
		'sequence.refund': { readonly expected: 'refund'; readonly hi: number; readonly found: string };
		'sequence.place': OutOfLimits<'place'>;
		'sequence.walk': From0<'walk'>;
		'sequence.error-rate': OutOfLimits<'error-rate'>;
		'sequence.answer': OutOfLimits<'answer'>;
		'sequence.contradiction': { readonly trouble: 'no-suspect-fits' };
		'sequence.order': { readonly expected: 'each-check-once'; readonly checks: number };
		'sequence.policy': NotAmong;
		'sequence.limit': OutOfLimits<'limit'>;
		'sequence.exact-size':
			| { readonly trouble: 'too-many-suspects'; readonly limit: number; readonly suspects: number }
			| { readonly trouble: 'not-through'; readonly tries: number };

		'line.device-twice': { readonly trouble: 'id-twice'; readonly id: string };
		'line.cable-twice': { readonly trouble: 'id-twice'; readonly id: string };
		'line.loads': { readonly expected: 'from-0'; readonly fixture: string; readonly found: string };
		'line.length': { readonly expected: 'over-0'; readonly cable: string; readonly found: string };
		'line.talker-twice': { readonly trouble: 'source-twice'; readonly socket: string };
		'line.leader-unknown': { readonly trouble: 'no-such-leader'; readonly fixture: string; readonly port: string };

		'held.index': NoIndex;
		'programme.index': NoIndex;
		'ask.shape': {
			readonly trouble: 'of-another-size';
			readonly profile: string;
			readonly cells: number;
			readonly emitters: number;
		};

		'rig.options': Shape;
		'rig.wait': { readonly expected: 'from-0'; readonly found: string };
		'rig.fixture': {
			readonly trouble: 'no-such-fixture';
			readonly found: string;
			readonly known: readonly string[];
		};
		'event.shape': Shape | { readonly expected: 'event'; readonly found: string };
		'event.wait': { readonly trouble: 'time-by-send' };
		'event.key':
			| { readonly trouble: 'no-keys'; readonly fixture: string }
			| { readonly trouble: 'no-such-key'; readonly fixture: string; readonly key: string };
		'event.switch': { readonly trouble: 'no-switches'; readonly fixture: string };
		'event.slide': {
			readonly trouble: 'no-such-position';
			readonly fixture: string;
			readonly slide: string;
			readonly position: number;
		};
		'event.settings': { readonly trouble: 'switches-alone'; readonly profile: string };
		'event.charge': { readonly trouble: 'no-battery'; readonly profile: string };
		'event.mains': { readonly trouble: 'no-link-socket' | 'feeds-itself'; readonly fixture: string };
		'event.remote': { readonly trouble: 'no-remote' };
		'event.desk':
			| { readonly trouble: 'no-desk' }
			| { readonly trouble: 'no-such-output'; readonly id: string; readonly known: readonly string[] };
		'event.box': { readonly trouble: 'no-such-box'; readonly id: string };
		'event.cable':
			| { readonly trouble: 'id-taken' | 'end-loose' | 'no-such-cable'; readonly id: string }
			| { readonly trouble: 'end-plugged'; readonly id: string; readonly port: string };
		'event.socket':
			| { readonly trouble: 'both-ends-in-one-socket' }
			| { readonly trouble: 'cable-in-it'; readonly port: string; readonly cable: string }
			| { readonly trouble: 'terminator-in-it' | 'no-such-socket'; readonly port: string };
		'event.terminator': { readonly trouble: 'no-terminator'; readonly port: string };
		'log.shape': { readonly expected: 'list'; readonly found: string };
		'log.length': { readonly trouble: 'too-many-events'; readonly limit: number; readonly events: number };

		'finder.complaint':
			| { readonly expected: 'complaint'; readonly known: readonly string[]; readonly found: string }
			| { readonly trouble: 'not-meant-to'; readonly fixture: string; readonly kind: string };
		'finder.check': { readonly trouble: 'no-such-check'; readonly found: string };
		'finder.outcome': NotAmong & { readonly check: string };

		'drill.kind': NotAmong;
		'drill.shape': Shape;
		'drill.fixture': { readonly trouble: 'no-such-fixture'; readonly id: string };
		'drill.hands': { readonly trouble: 'not-in-hand'; readonly hands: readonly string[]; readonly type: string };
		'drill.stuck': { readonly trouble: 'cannot-be-finished' };
		'task.solved': { readonly trouble: 'solved-already' };
		'paper.practical': { readonly trouble: 'not-practical'; readonly form: string };
	}
}

/** Lists that a problem is made of. */
type SequenceList = 'weights' | 'outcomes' | 'costs' | 'row' | 'refunds' | 'repairs' | 'walks' | 'places' | 'walk-row';
