/** Words of the drawings: what each shows, for those who cannot see it, and the line under it. */
export const figureWords = {
	conductors: {
		common: 'common',
		'data-minus': 'data −',
		'data-plus': 'data +',
		'second-minus': 'second − (if any)',
		'second-plus': 'second + (if any)',
	},
	plugs: { five: 'five pins', three: 'three pins' },
	/** What stands in each drawing; two lines where it is broken in two. */
	drawn: {
		bond: {
			pipe: 'rated pipe',
			clamp: 'rated clamp',
			bond: ['safety bond,', 'kept short'],
			closure: ['closure,', 'done up'],
			point: ['maker’s', 'bond point'],
		},
		ways: { floor: 'on the floor', bracket: 'on a bracket', clamp: 'by a clamp' },
		column: {
			column: 'in a column',
			in: 'air in',
			out: 'air out',
			facade: 'behind a facade',
			screen: 'screen',
			wall: 'wall',
		},
		coil: { tie: 'one tie', plugs: 'plugs free' },
		overUnder: { over: 'over: in front', under: 'under: behind', from: 'from the coil', on: 'the rest' },
		focus: { wall: 'aim', spill: 'spill', glare: 'glare', light: 'light' },
		pins: { plug: 'plug', socket: 'socket', key: ['The notch at the', 'top is the key.'] },
		branches: { box: 'splitter', branches: 'each branch is a line', ends: 'terminators' },
		curves: {
			straight: 'straight',
			square: 'square',
			soft: 'soft',
			level: 'fader, 0 to full',
			full: 'full',
			out: 'out',
		},
		throw: { throw: 'throw', pool: 'pool', beam: 'beam angle' },
		graze: { close: 'close: texture', further: 'further, tilted: smooth' },
		overlap: {
			sum: 'the line is the sum of the two',
			half: 'half as bright',
			apart: 'too far apart: a dip between',
			closer: 'half-bright edges meet: near enough level',
		},
		square: { once: '1 × throw', twice: '2 × throw', all: 'all of it', quarter: '¼ on each' },
		daisy: { desk: 'desk', in: 'in', out: 'out', terminator: 'terminator' },
		frame: {
			break: 'break',
			startCode: 'start code',
			reads: 'a fixture at 1 with 9 channels reads these',
			next: 'the next one starts at 10',
		},
		half: {
			covers: 'faders down, lenses covered',
			broken: 'the break',
			lit: '{look}. {n} has data',
			dark: '{look}. {n} has none',
		},
		lead: { leads: 'leads', follow: 'follow', terminator: 'terminator' },
		switches: { switch: 'switch', worth: 'worth' },
		bands: { band: '{name} ({from} to {to})' },
	},
	figures: {
		bond: {
			shows:
				'A wash hung from a pipe by a rated clamp. A safety bond runs from the maker’s bond point on the body of the wash up over the pipe and back, not round its yoke. A closure at its end is shut and done up. The bond is short.',
			caption:
				'Two fixings: the clamp holds it, and the bond catches it. The bond is short, and its closure is done up.',
		},
		ways: {
			shows:
				'Three lights: one stands on the floor, one sits on a bracket at a wall, one hangs from a pipe by a clamp. The two that are off the floor each have a safety bond.',
			caption: 'Floor, bracket, clamp. All that is off the floor has a bond.',
		},
		column: {
			shows:
				'Cut open from the side: a light stands at the foot inside a hollow column and shines up it. The column stands on legs, so air comes in at the foot, and its lid stands clear, so air goes out at the top. Another light stands between a screen and a wall, and shines up the wall behind the screen.',
			caption: 'Inside a column, with a real gap for air at foot and top, and behind a facade.',
		},
		coil: {
			shows: 'A cable in even round loops, held by a tie. Both plugs hang free of the coil.',
			caption: 'Even loops, one tie, plugs free.',
		},
		'over-under': {
			shows:
				'Two loops of one cable. In the first, laid over, the end that goes on passes in front of the cable it comes from. In the second, laid under, it passes behind.',
			caption: 'Over, under, over, under: each twist takes the last one out.',
		},
		throw: {
			shows:
				'From the side: a light, its beam, and a wall. The throw is the distance from light to wall. The beam angle is how far the beam opens. The pool is how tall the light is on the wall.',
			caption: 'Throw, beam angle and pool.',
		},
		graze: {
			shows:
				'From the side: a light close under a rough wall shines steeply up it. Another stands further off from a wall and is tilted up at it.',
			caption: 'Close shows texture. Further off looks smooth.',
		},
		focus: {
			shows:
				'From the side: a light on the floor aimed at a wall. Its beam lands on the wall. Some light spills over the top of the wall and some onto the floor in front of it. A person stands in the way, and the beam goes straight into their eyes.',
			caption: 'Aim is where it should land. Spill is what lands elsewhere. Glare is what lands in eyes.',
		},
		overlap: {
			shows:
				'Two charts of the light along a wall from two neighbours, each a soft hump, with a line for the sum of the two. Too far apart, the sum has a deep dip between them. Where the half-bright edges meet, the sum is near enough level.',
			caption: 'Worked out from the beam of the Tallow 6. Where half-bright edges meet, the two halves add up.',
		},
		square: {
			shows:
				'A beam that opens from a light, and two squares of wall in it. At one throw all the light falls on one square. At twice the throw it covers four such squares, and each gets a quarter.',
			caption: 'Twice the throw, a quarter of the light.',
		},
		pins: {
			shows:
				'The faces of a five-pin plug and socket and a three-pin plug and socket, each with its key at the top. On a plug with five pins the numbers run clockwise from the key, 1 to 5; with three, 1 is right of the key, 2 left of it and 3 at the bottom. A socket is the mirror image. Pin 1 is common, 2 is data minus, 3 is data plus; on some old three-pin kit 2 and 3 change places. Pins 4 and 5 are a second pair, often not wired, and on some kit put to another use, and only five-pin plugs have them.',
			caption:
				'Looking at the face. Drawn from memory of IEC 61076-2-103: trust the numbers by the pins. On some old three-pin kit 2 and 3 change places.',
		},
		daisy: {
			shows:
				'A desk, then three lights in a row. A cable runs from each out to the next in. In the out of the last stands a terminator.',
			caption: 'Out to in, out to in, and a terminator at the end.',
		},
		frame: {
			shows:
				'One frame in a row: a break, a start code of 0, then channels 1 to 512. A fixture at address 1 with 9 channels reads 1 to 9. The next fixture starts at 10.',
			caption: 'One frame, sent over and over.',
		},
		half: {
			shows:
				'A row of eight fixtures on one line, with the faders down and covers over their lenses, so that no light shows. The data indicators of the first five are lit, those of the last three aren’t. The first look is at 4, which has data; the second at 6, which has none; the third at 5, which has data. So the break is between 5 and 6.',
			caption:
				'No light to see? Read the data indicators. Never cover a lens that is lit. Look in the middle: each look halves what’s left.',
		},
		lead: {
			shows:
				'Four lights in a row on one line. The first leads, and an arrow runs from it to each of the three that follow. A terminator stands in the last.',
			caption: 'One leads. The rest do as it does. Its line ends in a terminator too.',
		},
		branches: {
			shows:
				'A desk feeds a splitter. Three branches leave it, each with two fixtures in a row and a terminator at its end.',
			caption: 'A fork in a line needs a splitter. Each branch then ends in a terminator.',
		},
		switches: {
			shows:
				'Ten small switches, numbered, with what each of the first nine is worth below it, from 1 to 256. Those that are up are added to make the start address 24.',
			caption: 'Add the weights of the switches that are up.',
		},
		bands: {
			shows:
				'The function channel of a battery wash as a tall column from 0 to 255, cut into bands. Each band has a name and its first and last value.',
			caption: 'One channel, many bands, from 0 to 255. Drawn from the chart of the Tallow 6.',
		},
		curves: {
			shows:
				'A chart of light against fader for three dimmer curves. The straight one rises evenly. The square one rises slowly at first and fast near the top. The soft one is gentle at both ends.',
			caption: 'Three dimmer curves, as the fixtures of this site have them.',
		},
	},
} as const;
