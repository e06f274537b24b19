/** Words of the drawings: what each shows, for those who cannot see it, and the line under it. */
export const figureWords = {
	conductors: {
		common: 'common',
		'data-minus': 'data −',
		'data-plus': 'data +',
		'second-minus': 'second −',
		'second-plus': 'second +',
	},
	plugs: { five: 'five pins', three: 'three pins' },
	/** What stands in each drawing; two lines where it is broken in two. */
	drawn: {
		bond: {
			pipe: 'rated pipe',
			clamp: 'rated clamp',
			bond: ['safety bond,', 'little slack'],
			point: ['maker’s', 'bond point'],
		},
		ways: { floor: 'on the floor', bracket: 'on a bracket', clamp: 'by a clamp' },
		column: { column: 'in a column', gaps: 'gaps for air', facade: 'behind a facade', screen: 'screen', wall: 'wall' },
		coil: { tie: 'one tie', plugs: 'plugs free' },
		throw: { throw: 'throw', pool: 'pool', beam: 'beam angle' },
		graze: { close: 'close: texture', further: 'further, tilted: smooth' },
		overlap: { apart: 'too far apart: dark between', closer: 'closer: even' },
		square: { once: '1 × throw', twice: '2 × throw', all: 'all of it', quarter: '¼ on each' },
		daisy: { desk: 'desk', in: 'in', out: 'out', terminator: 'terminator' },
		frame: {
			break: 'break',
			startCode: 'start code',
			reads: 'a fixture at 1 with 9 channels reads these',
			next: 'the next one starts at 10',
		},
		half: { first: 'look here first: between 4 and 5', second: 'then here: 6 is dark' },
		lead: { leads: 'leads', follow: 'follow' },
		switches: { switch: 'switch', worth: 'worth' },
		bands: { band: '{name} ({from} to {to})' },
	},
	figures: {
		bond: {
			shows:
				'A wash hung from a pipe by a rated clamp. A safety bond runs round the pipe and through the maker’s bond point on the body of the wash, not round its yoke, with little slack.',
			caption: 'Two fixings: the clamp holds it, and the bond catches it.',
		},
		ways: {
			shows:
				'Three lights: one stands on the floor, one sits on a bracket at a wall, one hangs from a pipe by a clamp. The two that are off the floor each have a safety bond.',
			caption: 'Floor, bracket, clamp. All that is off the floor has a bond.',
		},
		column: {
			shows:
				'Cut open from the side: a light stands at the foot inside a hollow column and shines up it, with a gap for air at the foot and one at the top. Another stands between a screen and a wall, and shines up the wall behind the screen.',
			caption: 'Inside a column, and behind a facade.',
		},
		coil: {
			shows: 'A cable in even round loops, held by a tie. Both plugs hang free of the coil.',
			caption: 'Even loops, one tie, plugs free.',
		},
		throw: {
			shows:
				'From the side: a light, its beam, and a wall. The throw is the way from light to wall. The beam angle is how far the beam opens. The pool is how tall the light is on the wall.',
			caption: 'Throw, beam angle and pool.',
		},
		graze: {
			shows:
				'From the side: a light close under a rough wall shines steeply up it. Another stands further off from a wall and is tilted up at it.',
			caption: 'Close shows texture. Further off looks smooth.',
		},
		overlap: {
			shows:
				'Two rows of three round pools on a wall. In the first they stand apart, with dark between. In the second they run into each other.',
			caption: 'Too far apart leaves dark between. Half-bright edges may meet, for there the light adds up.',
		},
		square: {
			shows:
				'A beam that opens from a light, and two squares of wall in it. At one throw all the light falls on one square. At twice the throw it covers four such squares, and each gets a quarter.',
			caption: 'Twice the throw, a quarter of the light.',
		},
		pins: {
			shows:
				'The pins of five-pin and three-pin data plugs, one under the other. Pin 1 is common, 2 is data minus, 3 is data plus; on some old three-pin kit 2 and 3 change places. Pins 4 and 5 are a second pair, and only five-pin plugs have them.',
			caption: 'What each pin carries. On the plug they stand in a ring, each with its number beside it.',
		},
		daisy: {
			shows:
				'A desk, then three lights in a row. A cable runs from each out to the next in. In the out of the last stands a terminator.',
			caption: 'Out to in, out to in, and a terminator at the end.',
		},
		frame: {
			shows:
				'One frame in a row: a break, a start code of 0, then channels 1 to 512. A light at address 1 with 9 channels reads channels 1 to 9. The next light starts at 10.',
			caption: 'One frame, sent over and over.',
		},
		half: {
			shows:
				'Eight lights on one line. The first five are lit and the last three are dark. The first place to look is between 4 and 5, then at 6.',
			caption: 'Look in the middle: each look halves what’s left.',
		},
		lead: {
			shows: 'Four lights in a row on one line. The first leads, and an arrow runs from it to the three that follow.',
			caption: 'One leads. The rest do as it does.',
		},
		switches: {
			shows:
				'Ten small switches, numbered, with what each of the first nine is worth below it, from 1 to 256. Those that are up are added to make the start address 24.',
			caption: 'Add the weights of the switches that are up.',
		},
		bands: {
			shows:
				'The function channel of a battery wash as a tall column from 0 to 255, cut into bands. Each band has a name and its first and last value.',
			caption: 'One channel, many bands. Drawn from the chart of the Tallow 6.',
		},
	},
} as const;
