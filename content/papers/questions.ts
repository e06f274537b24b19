import type { QuestionSays } from './says.ts';

/** The kinds that are arithmetic on profiles and sheets, by id. */
export const questions = {
	'value-function': {
		name: 'What a value does',
		ask: 'Slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, stands at value {value}. What does it do?',
		chart: 'The chart of that slot:',
		working: [
			[
				{
					when: { byStarts: true },
					says: 'A band runs to one below where the next one starts, so {value} lies in the one from {from} to {to}.',
				},
				{ says: '{value} lies in the band from {from} to {to}.' },
			],
			'That band is “{name}”.',
		],
		why: 'A slot with bands does one thing from the first value of a band to its last, both included.',
	},
	'percent-of-value': {
		name: 'A value in percent',
		ask: 'The desk holds a slot at value {value}. What percent is that?',
		working: [
			'Full is 255, so {value} is {value} × 100 / 255 = {hundredths} %.',
			[
				{ when: { same: true }, says: 'As a whole percent that is {percent} %.' },
				{
					says: 'To the nearest whole that is {percent} %, and a desk that drops the rest shows {dropped} %. Both are right.',
				},
			],
		],
		why: 'A percent is a share of 255, since 0 counts as a value too and 255 is the highest.',
	},
	'match-slots': {
		name: 'Slots of the desk to what they do',
		ask: '{fixture} is in mode “{mode}” with start address {start}. What does each of these slots of the desk do?',
		chart: 'The slots of that mode, counted in the fixture:',
		working: [
			'The fixture’s slot 1 is slot {start} of the desk.',
			[
				{ when: { start: 1 }, says: 'So both count alike.' },
				{ says: 'Take {less} from a slot of the desk, and its number in the fixture is left.' },
			],
		],
		why: 'The start address is where a fixture’s first slot stands, and the others follow one by one.',
	},
	'last-slot': {
		name: 'The last slot taken',
		ask: [
			{
				when: { count: 1 },
				says: '{fixture} in mode “{mode}” takes {each} {each?slot|slots}. Its start address is {start}. What is the last slot it takes?',
			},
			{
				says: '{count} × {fixture} in mode “{mode}” take {each} {each?slot|slots} each. They stand back to back, and the first starts at {start}. What is the last slot that the last one takes?',
			},
		],
		working: [
			[{ when: { count: 1 }, says: '' }, { says: '{count} × {each} = {footprint} slots in all.' }],
			'{start} + {footprint} = {after} is the first slot behind.',
			'One less is the last one taken: {last}.',
		],
		why: 'The start address is the first of the slots, so the last is the start and the footprint, less one.',
	},
	'nth-address': {
		name: 'The address of one in a row',
		ask: '{fixture} in mode “{mode}” takes {footprint} {footprint?slot|slots}. A row of them stands back to back, and the first starts at {first}. What is the start address of number {n}?',
		working: [
			'{before} {before?fixture stands|fixtures stand} before it, and {before?takes|take} {before} × {footprint} = {slots} slots.',
			'{first} + {slots} = {right}.',
		],
		why: 'Only the fixtures before it push a fixture along, so number {n} is pushed {before} times.',
	},
	'address-to-dip': {
		name: 'Switches for an address',
		ask: [
			{
				when: { wiring: 'sum' },
				says: '{fixture} adds up what its switches are worth: 1 for switch 1, then twice as much each time, 256 for switch 9. Set them to start address {address}.',
			},
			{
				says: '{fixture} adds up what its switches are worth (1 for switch 1, then twice as much each time, 256 for switch 9) and adds one. Set them to start address {address}.',
			},
		],
		working: [
			[
				{ when: { wiring: 'sum' }, says: '' },
				{ says: 'It adds one by itself, so the switches have to come to {address} − 1 = {sum}.' },
			],
			[
				{ when: { single: true }, says: '{sum} is worth one switch by itself.' },
				{ says: 'Taking the largest that fits each time, {sum} = {weights as sum}.' },
			],
			'That is {up?switch|switches} {up as every} up.',
		],
		why: 'Each switch is worth twice the one before, so every sum is made in one way only.',
	},
	'function-values': {
		name: 'Values that do it',
		ask: [
			{
				when: { form: 'one' },
				says: 'Which values of slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, give “{name}”: all of them, and no others?',
			},
			{ says: 'Which of these values of slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, give “{name}”?' },
		],
		chart: 'The chart of that slot:',
		working: [
			[
				{
					when: { form: 'one', last: true },
					says: '“{name}” starts at {from}, and nothing comes behind it, so it runs to the top, 255.',
				},
				{
					when: { form: 'one' },
					says: '“{name}” starts at {from}. The next band starts at {next}, so it ends one below, at {to}.',
				},
				{
					when: { byStarts: true },
					says: 'A band runs to one below where the next one starts, so “{name}” runs over {stretches as stretches}.',
				},
				{ says: '“{name}” runs over {stretches as stretches}.' },
			],
			[
				{ when: { form: 'one' }, says: '' },
				{ says: 'A value within that gives it, the first and the last value too.' },
			],
		],
		why: 'A band holds every value from its first to its last, and the next one starts right behind.',
	},
	'band-edge': {
		name: 'The edge of a band',
		ask: [
			{
				when: { edge: 'lowest' },
				says: 'What is the lowest value of slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, that gives “{name}”?',
			},
			{
				says: 'What is the highest value of slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, that gives “{name}”?',
			},
		],
		chart: [
			{ when: { hex: true }, says: 'The chart of that slot, in hexadecimal:' },
			{ says: 'The chart of that slot:' },
		],
		working: [
			[
				{ when: { read: true }, says: 'The chart has it: {right}.' },
				{ when: { given: null, edge: 'lowest' }, says: '“{name}” is the first band, and the first value is 0.' },
				{ when: { given: null }, says: '“{name}” is the last band, and the highest value is 255.' },
				{
					when: { edge: 'lowest', hex: true },
					says: '“{beside}”, the band before, ends at x{given as hex}, which is {given}.',
				},
				{ when: { edge: 'lowest' }, says: '“{beside}”, the band before, ends at {given}.' },
				{ when: { hex: true }, says: '“{beside}”, the band behind, starts at x{given as hex}, which is {given}.' },
				{ says: '“{beside}”, the band behind, starts at {given}.' },
			],
			[
				{ when: { read: true }, says: '' },
				{ when: { given: null }, says: '' },
				{ when: { edge: 'lowest' }, says: 'One more is the first value of “{name}”: {right}.' },
				{ says: 'One less is the last value of “{name}”: {right}.' },
			],
		],
		why: 'Bands lie edge to edge, so each starts one above where the one before ends.',
	},
	'band-middle': {
		name: 'The middle of a band',
		ask: 'What is the middle value of the band “{name}” of slot {n} (“{slot}”) of {fixture}, in mode “{mode}”? Of two middles, either is right.',
		chart: 'The chart of that slot:',
		working: [
			[
				{ when: { before: null }, says: '“{name}” runs from {from} to {to}.' },
				{ says: 'The band before ends at {before}, so “{name}” runs from {from} to {to}.' },
			],
			'{from} + {to} = {sum}, and half of that is {half}.',
			[{ when: { two: true }, says: 'Two values are in the middle: {lower} and {upper}.' }, { says: '' }],
		],
		why: 'The middle is the safest value to type: it stays in the band whichever way a desk rounds.',
	},
	'value-of-percent': {
		name: 'A percent as a value',
		ask: 'A slot is to stand at {percent} %. Which value is that?',
		working: [
			'Full is 255, so {percent} % of it is {percent} × 255 / 100 = {exact}.',
			[
				{ when: { percent: 0 }, says: 'That is 0.' },
				{
					says: 'To the nearest whole that is {value}. Desks round one way or the other, so any value from {low} to {high} is right.',
				},
			],
		],
		why: 'A percent is a share of 255, since 0 counts as a value too and 255 is the highest.',
	},
	'hex-of-value': {
		name: 'A value in hexadecimal',
		ask: 'Write the value {value} in hexadecimal, as two digits.',
		working: [
			[
				{ when: { high: 0 }, says: '{value} is below 16, so there are no sixteens in it, and {low} is left.' },
				{ when: { low: 0 }, says: '{high} × 16 = {value}, and nothing is left.' },
				{ says: '{high} × 16 = {sixteens} is the most sixteens in {value}, and {value} − {sixteens} = {low} is left.' },
			],
			'As digits from 0 to F those are {highDigit} and {lowDigit}, so it is x{hex}.',
		],
		why: 'Hexadecimal counts in sixteens: the first digit says how many sixteens, the second what is left.',
	},
	'value-of-hex': {
		name: 'Hexadecimal as a value',
		ask: 'A level reads x{hex} in hexadecimal. Which value is that, from 0 to 255?',
		working: [
			'The first digit is {high}, so {high} × 16 = {sixteens}.',
			'The second is {low}, and {sixteens} + {low} = {value}.',
		],
		why: 'Hexadecimal counts in sixteens: the first digit says how many sixteens, the second what is left.',
	},
	'slot-does': {
		name: 'What a slot does',
		ask: '{fixture} is in mode “{mode}” with start address {start}. What does slot {slot} of the desk do to it?',
		chart: [
			{ when: { counted: true }, says: 'The slots of that mode, in order:' },
			{ says: 'The slots of that mode, counted in the fixture:' },
		],
		working: [
			[
				{ when: { start: 1 }, says: 'It starts at 1, so slot {slot} of the desk is slot {n} of the fixture.' },
				{ says: 'It starts at {start}, so slot {slot} of the desk is slot {slot} − {less} = {n} of the fixture.' },
			],
			[
				{ when: { counted: true }, says: 'A pair of coarse and fine takes two slots, so count it twice.' },
				{ says: '' },
			],
			[
				{ when: { part: 'coarse' }, says: 'Slot {n} is “{name}”, coarse.' },
				{ when: { part: 'fine' }, says: 'Slot {n} is “{name}”, fine.' },
				{ says: 'Slot {n} is “{name}”.' },
			],
		],
		why: 'The start address is where a fixture’s first slot stands, and what each slot does hangs on the mode.',
	},
	'bands-in-order': {
		name: 'Bands in order',
		ask: [
			{
				when: { written: 'value' },
				says: 'Slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, goes slowly up from 0. In what order does it come to these? Each stands with its last value.',
			},
			{
				when: { written: 'percent' },
				says: 'Slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, goes slowly up from 0. In what order does it come to these? Each stands with its last value, some of them in percent.',
			},
			{
				says: 'Slot {n} (“{slot}”) of {fixture}, in mode “{mode}”, goes slowly up from 0. In what order does it come to these? Each stands with its last value, and an x says it is hexadecimal.',
			},
		],
		working: [
			[
				{ when: { written: 'value' }, says: 'They end at {tops as every}.' },
				{ says: 'As values from 0 to 255 they end at {tops as every}.' },
			],
			'So the order is: {names as inTurn}.',
		],
		why: [
			{
				when: { written: 'value' },
				says: 'Bands lie edge to edge from 0 to 255, so their last values rise as they follow each other.',
			},
			{ says: 'Two numbers can be compared once both are values: a percent and a hexadecimal number are none yet.' },
		],
	},
	'desk-slot': {
		name: 'A slot on the desk',
		ask: [
			{
				when: { part: 'coarse' },
				says: '{fixture}[ (“{crew}”)] is in mode “{mode}” with start address {start}[ in universe {otherUniverse}]. Which slot of the desk is its “{name}”, coarse?',
			},
			{
				when: { part: 'fine' },
				says: '{fixture}[ (“{crew}”)] is in mode “{mode}” with start address {start}[ in universe {otherUniverse}]. Which slot of the desk is its “{name}”, fine?',
			},
			{
				says: '{fixture}[ (“{crew}”)] is in mode “{mode}” with start address {start}[ in universe {otherUniverse}]. Which slot of the desk is its “{name}”?',
			},
		],
		chart: [
			{ when: { counted: true }, says: 'The slots of that mode, in order:' },
			{ says: 'The slots of that mode, counted in the fixture:' },
		],
		working: [
			[
				{ when: { counted: true }, says: 'In the fixture it is slot {n}, a pair of coarse and fine counting as two.' },
				{ says: 'In the fixture it is slot {n}.' },
			],
			'{before} {before?slot stands|slots stand} before it, so on the desk it is {start} + {before} = {right}.',
		],
		why: 'The start address itself is the fixture’s first slot, so only the slots before are added.',
	},
	footprint: {
		name: 'How many slots',
		ask: [
			{ when: { count: 1, more: 0 }, says: 'How many slots does {fixture} take in mode “{mode}”?' },
			{ when: { more: 0 }, says: 'How many slots do {count} × {fixture} in mode “{mode}” take together?' },
			{
				says: 'How many slots do {count} × {fixture} in mode “{mode}” and {more} × {moreFixture} in mode “{moreMode}” take together? Each of the latter takes {moreEach} {moreEach?slot|slots}.',
			},
		],
		chart: 'The slots of {fixture} in mode “{mode}”, in order:',
		working: [
			[
				{ when: { pairs: 0 }, says: 'The chart lists {entries} {entries?slot|slots}.' },
				{
					says: 'The chart lists {entries}, and {pairs} of them {pairs?is a pair|are pairs} of coarse and fine, so one of the fixture takes {entries} + {pairs} = {each}.',
				},
			],
			[{ when: { count: 1 }, says: '' }, { says: '{count} × {each} = {product}.' }],
			[
				{ when: { more: 0 }, says: '' },
				{ says: '{more} × {moreEach} = {moreProduct}, and {product} + {moreProduct} = {right}.' },
			],
		],
		why: 'A 16-bit slot is two slots on the line, coarse and fine, and the footprint counts both.',
	},
	'next-free': {
		name: 'The next free address',
		ask: 'These stand on universe {universe}. What is the lowest start address at which {fixture} in mode “{mode}” fits, with {footprint} {footprint?slot|slots}, and shares none with them?',
		chart: 'On the line already:',
		working: [
			[
				{ when: { beforeName: null }, says: 'The first {footprint} {footprint?slot is|slots are} free.' },
				{ says: '“{beforeName}” starts at {beforeStart} and ends at {beforeLast}.' },
			],
			[
				{ when: { gap: true }, says: 'Any gap before that is too narrow for {footprint} {footprint?slot|slots}.' },
				{ says: '' },
			],
			'From {right} to {end} every slot is free, so it goes to {right}.',
		],
		why: 'A fixture needs its whole footprint free, and the first slot behind a fixture is the last one it takes and one more.',
	},
	overlaps: {
		name: 'Which share slots',
		ask: [
			{
				when: { others: true },
				says: 'Which of these fixtures share a slot with another? Mind the universes.',
			},
			{ says: 'All of these stand on one universe. Which of them share a slot with another?' },
		],
		working: [
			'Each takes the slots from its start address to the start and the footprint, less one.',
			'{pairs as sharings}',
		],
		why: 'Two fixtures that share a slot both answer it, and where the first ends one below the next, nothing is shared.',
		labels: {
			'placed-from': [
				{
					when: { others: true },
					says: '{name}: universe {universe}, from {start}, {footprint} {footprint?slot|slots}',
				},
				{ says: '{name}: from {start}, {footprint} {footprint?slot|slots}' },
			],
		},
	},
	'runs-past': {
		name: 'Past the end or not',
		ask: '{fixture} in mode “{mode}” takes {footprint} slots, and its start address is {start} in universe 1. Does all of it fit before the end?',
		working: [
			'Its last slot would be {start} + {footprint} − 1 = {last}.',
			[
				{ when: { fits: true }, says: 'A universe ends at 512, so all of it fits.' },
				{ says: 'A universe ends at 512, so {last} − 512 = {past} {past?slot lies|slots lie} past it.' },
			],
		],
		why: 'What lies past 512 is never sent, and it does not go on in the next universe.',
		labels: {
			'runs-fits': 'All of it fits: its last slot is {last}.',
			'runs-past': '{past} {past?slot lies|slots lie} past the end and {past?gets|get} nothing.',
			'runs-on': '{past} {past?slot goes|slots go} on in universe {next}, from slot 1.',
		},
	},
	'how-many-fit': {
		name: 'How many fit',
		ask: [
			{
				when: { start: 1 },
				says: '{fixture} in mode “{mode}” takes {footprint} {footprint?slot|slots}. How many fit into one universe, back to back from slot 1?',
			},
			{
				when: { others: 0 },
				says: '{fixture} in mode “{mode}” takes {footprint} {footprint?slot|slots}. How many fit into one universe, back to back from slot {start}?',
			},
			{
				says: '{others} × {othersFixture} in mode “{othersMode}”, with {othersEach} {othersEach?slot|slots} each, stand back to back from slot 1. How many {fixture} in mode “{mode}”, with {footprint} {footprint?slot|slots}, fit behind them into the same universe?',
			},
		],
		working: [
			[
				{ when: { others: 0 }, says: '' },
				{ says: '{others} × {othersEach} slots are taken, so slot {start} is the first free one.' },
			],
			'From {start} to 512 there {room?is|are} {room} {room?slot|slots}.',
			[
				{ when: { left: 0 }, says: '{right} × {footprint} = {used}, which leaves nothing over.' },
				{ says: '{right} × {footprint} = {used}, and the {left} left over {left?is|are} too few for one more.' },
			],
		],
		why: 'A fixture is never split over two universes, so what is left over stays empty.',
	},
	'dip-to-address': {
		name: 'The address of switches',
		ask: [
			{
				when: { wiring: 'sum' },
				says: 'On {fixture} {up?switch|switches} {up as every} {up?is|are} up and the others down. It adds up what they are worth: 1 for switch 1, then twice as much each time, 256 for switch 9. Which start address is that?',
			},
			{
				says: 'On {fixture} {up?switch|switches} {up as every} {up?is|are} up and the others down. It adds up what they are worth (1 for switch 1, then twice as much each time, 256 for switch 9) and adds one. Which start address is that?',
			},
		],
		working: [
			[
				{ when: { single: true }, says: 'Switch {up as every} is worth {sum}.' },
				{ says: 'Switches {up as every} are worth {weights as sum} = {sum}.' },
			],
			[{ when: { wiring: 'sum' }, says: 'So the address is {address}.' }, { says: '{sum} + 1 = {address}.' }],
		],
		why: 'Each switch is worth twice the one before, so every sum is made in one way only.',
	},
	'coarse-fine': {
		name: 'Coarse and fine',
		ask: '“{slot}” of {fixture}, in mode “{mode}”, is a 16-bit pair. It is to stand at {word} of 65535. What do coarse and fine stand at?',
		working: [
			'{word} / 256 is {coarse} and something left over, so coarse is {coarse}.',
			'{coarse} × 256 = {whole}, and {word} − {whole} = {fine}, so fine is {fine}.',
		],
		why: 'One step of coarse is worth 256 steps of fine, since fine has 256 values from 0 to 255.',
	},
	'value-of-pair': {
		name: 'A pair as one value',
		ask: '“{slot}” of {fixture}, in mode “{mode}”, is a 16-bit pair. Coarse stands at {coarse} and fine at {fine}. Which value from 0 to 65535 is that?',
		working: ['{coarse} × 256 = {whole}.', '{whole} + {fine} = {word}.'],
		why: 'One step of coarse is worth 256 steps of fine, since fine has 256 values from 0 to 255.',
	},
} as const satisfies Record<string, QuestionSays>;
