/** Words and short forms met on real panels, labels and sheets, that mean one thing. */
export interface Elsewhere {
	/** As they are met, the usual ones first. Capitals differ from maker to maker. */
	readonly met: readonly string[];
	/** What they mean there. */
	readonly means: string;
	/** Id of the glossary’s term for it, which is what we say. */
	readonly term: string;
}

/** Where they are met. Ids are permanent: they are places on the page. */
export const elsewhere: readonly {
	readonly id: string;
	readonly heading: string;
	readonly caption: string;
	readonly rows: readonly Elsewhere[];
}[] = [
	{
		id: 'on-a-panel',
		heading: 'On a panel',
		caption: 'Words and short forms on a panel or a display',
		rows: [
			{
				met: ['Addr', 'Adr', 'Add'],
				means: 'The start address.',
				term: 'start-address',
			},
			{
				met: ['Ch', 'Chan'],
				means: 'A channel. With a number, how many channels this mode takes.',
				term: 'slot',
			},
			{ met: ['Mode', 'Pers'], means: 'The mode: which chart the fixture goes by.', term: 'mode' },
			{ met: ['DMX', 'Line', 'Desk'], means: 'The light comes from the line.', term: 'e1-11' },
			{
				met: ['Stat', 'Static', 'Manual', 'Fixed'],
				means: 'A static colour, set at the panel.',
				term: 'held-colour',
			},
			{
				met: ['Auto', 'Pgm', 'Prog', 'Show', 'Macro', 'Chase'],
				means: 'A programme that is built in.',
				term: 'programme',
			},
			{ met: ['Spd', 'Sp', 'Rate', 'Fade'], means: 'How fast a programme runs.', term: 'speed' },
			{
				met: ['Snd', 'Sound', 'Aud', 'Music', 'Active'],
				means: 'Sound mode: a microphone moves the programme on.',
				term: 'sound-to-light',
			},
			{ met: ['Sens', 'Mic', 'Gain'], means: 'How loud it must be for the microphone.', term: 'sensitivity' },
			{
				met: ['Mstr', 'Master', 'Pri', 'Primary', 'Host'],
				means:
					'The leader. “Master” is the older word, met on many panels. On a desk, master is something else: the grand master.',
				term: 'leader',
			},
			{
				met: ['Slv', 'Slave', 'Sec', 'Secondary'],
				means: 'A follower. “Slave” is the older word for it. Read it where you meet it, and say follower.',
				term: 'follower',
			},
			{ met: ['Dim', 'Int'], means: 'How bright the whole fixture is.', term: 'intensity' },
			{
				met: ['Curv', 'Crv'],
				means: 'The dimmer curve, or how smoothly it follows.',
				term: 'dim-curve',
			},
			{ met: ['Lim', 'Max', 'Cap'], means: 'A limit to how bright it can get.', term: 'output-limit' },
			{
				met: ['Str', 'Strb', 'Shut'],
				means: 'Flashing, or the shutter that makes it. Warn people first.',
				term: 'strobe',
			},
			{ met: ['Hold', 'Last'], means: 'On signal loss, keep the last look.', term: 'hold-last-look' },
			{
				met: ['Blk', 'Off', 'Loss', 'Fail'],
				means: 'On signal loss, go dark; or the menu where you choose what it does then.',
				term: 'loss-of-data',
			},
			{
				met: ['Rst', 'Def', 'Dflt'],
				means: 'Back to defaults. Reset may mean a restart alone, or wipe the address too: read the manual first.',
				term: 'defaults',
			},
			{ met: ['Lock', 'Key', 'Pass', 'Code'], means: 'The panel is locked, or can be.', term: 'panel-lock' },
			{
				met: ['Disp', 'LCD'],
				means: 'When the display goes dark. The light itself stays as it is.',
				term: 'display-sleep',
			},
			{ met: ['Temp', 'Fan'], means: 'How hot it is inside, or how its fan runs.', term: 'fold-back' },
			{
				met: ['Hrs', 'Hour', 'Life', 'Time'],
				means: 'Hours it has been on since new. On a battery fixture it may be the hours left.',
				term: 'battery-hours',
			},
			{ met: ['Bat', 'Batt', 'Chg', 'Pwr'], means: 'The battery, and how full it is.', term: 'battery' },
			{
				met: ['Ver', 'Vers', 'SW', 'FW', 'Soft'],
				means: 'The version of the software inside. Two fixtures with different versions may not act alike.',
				term: 'firmware',
			},
			{ met: ['IR', 'Rem', 'Rmt'], means: 'The remote, or its sensor.', term: 'remote' },
			{
				met: ['CCT', 'CTO', 'WW', 'CW'],
				means: 'How warm or cold its white is. WW is warm white, CW is cold white.',
				term: 'colour-temperature',
			},
			{
				met: ['RGB', 'RGBW', 'RGBA', 'RGBAW', 'W', 'A', 'UV'],
				means: 'Which emitters it has: red, green, blue, white, amber, ultraviolet.',
				term: 'emitter',
			},
			{
				met: ['Pix', 'Pixel', 'Seg', 'Zone'],
				means: 'A part of the fixture with a colour of its own.',
				term: 'cell',
			},
		],
	},
	{
		id: 'on-a-label',
		heading: 'On a socket or a label',
		caption: 'Words and short forms on sockets, cables and labels',
		rows: [
			{
				met: ['XLR', 'XLR-3', 'XLR-5', '3-pin', '5-pin'],
				means: 'The round plug or socket that carries data.',
				term: 'xlr',
			},
			{ met: ['In', 'Input', 'DMX in'], means: 'Where data comes in.', term: 'data-in' },
			{
				met: ['Out', 'Thru', 'Through', 'Link'],
				means: 'Where data carries on to the next. On a mains socket, link feeds the next one.',
				term: 'data-out',
			},
			{ met: ['Term', '120R', '120 Ω'], means: 'The terminator, or a switch that puts one in.', term: 'terminator' },
			{ met: ['Wless', 'Wrls', 'RF'], means: 'Data by radio in place of a cable.', term: 'wireless-data' },
			{ met: ['RDM', 'E1.20'], means: 'The desk can ask the fixture things, and set it.', term: 'rdm' },
			{ met: ['sACN', 'E1.31', 'Net', 'Eth'], means: 'Data over a computer network.', term: 'sacn' },
			{ met: ['IEC', 'C13', 'C14'], means: 'A common mains plug and inlet on gear.', term: 'iec-connector' },
			{
				met: ['PSU', 'PS', 'Driver'],
				means: 'The part that turns mains into what the fixture needs.',
				term: 'power-supply',
			},
			{
				met: ['RCD', 'GFCI', 'GFI', 'RCBO'],
				means: 'Cuts the power when current leaks. RCD in the UK, GFCI in the US. An RCBO is a breaker as well.',
				term: 'rcd',
			},
			{ met: ['MCB', 'CB', 'Bkr'], means: 'A breaker.', term: 'breaker' },
			{ met: ['PE', 'Gnd', 'E'], means: 'Earth (ground in the US).', term: 'earth' },
			{
				met: ['PAT', 'Tested', 'Retest'],
				means: 'The UK’s check of plug, cable and earth, and its date.',
				term: 'pat',
			},
			{ met: ['PF', 'cos φ', 'VA'], means: 'The power factor, or watts divided by it.', term: 'power-factor' },
			{ met: ['Inrush', 'Surge', 'Cold start'], means: 'The rush of current at switch-on.', term: 'inrush-current' },
			{ met: ['Wh', 'Ah', 'mAh'], means: 'How much a battery holds.', term: 'watt-hour' },
			{ met: ['IP20', 'IP44', 'IP65'], means: 'How well it keeps out dust and water.', term: 'ip-rating' },
			{ met: ['WLL', 'SWL'], means: 'The load it may carry. No mark, no use overhead.', term: 'rated' },
			{ met: ['RG', 'RG1', 'RG2', 'RG3'], means: 'How much the light can hurt eyes or skin.', term: 'risk-group' },
		],
	},
	{
		id: 'on-a-sheet',
		heading: 'On a sheet, on a desk, or said aloud',
		caption: 'Words and short forms on sheets and desks, and said on the floor',
		rows: [
			{ met: ['Console', 'Board'], means: 'The desk.', term: 'desk' },
			{ met: ['BO', 'DBO', 'Blackout'], means: 'All light out at once.', term: 'blackout' },
			{ met: ['GM', 'Grand'], means: 'The grand master.', term: 'master' },
			{ met: ['Uni', 'Univ', 'U1'], means: 'The universe.', term: 'universe' },
			{ met: ['1/001', '1.001', '2/145'], means: 'Universe, then start address.', term: 'patch' },
			{
				met: ['Slot', 'Ch', 'Circuit'],
				means: 'Here, a channel. On a desk a channel may also be the number of a whole fixture: ask which is meant.',
				term: 'slot',
			},
			{ met: ['Unit', 'Head', 'Instrument', 'Lantern'], means: 'A fixture.', term: 'fixture' },
			{
				met: ['Batten', 'Striplight'],
				means: 'A bar with its light sources in a row. A batten is also a pipe to hang from, in the US.',
				term: 'bar',
			},
			{
				met: ['16 bit', 'MSB', 'LSB', 'Hi', 'Lo'],
				means: 'Two channels as one number: MSB is coarse, LSB is fine.',
				term: 'coarse-and-fine',
			},
			{
				met: ['N/F', 'No func', 'Reserved', 'Res'],
				means: 'A stretch of values that does nothing, or is kept for later. Park the fader where the chart says to.',
				term: 'band',
			},
			{ met: ['FX', 'Effect', 'Wheel'], means: 'A programme, called up by a channel.', term: 'programme' },
			{ met: ['Get-in', 'In'], means: 'Bringing the gear in: the theatre’s word for load-in.', term: 'load-in' },
			{
				met: ['Get-out', 'Strike', 'De-rig'],
				means: 'Taking it all down again: the theatre’s words for load-out.',
				term: 'load-out',
			},
		],
	},
];

/** Words around them. */
export const elsewhereWords = {
	says: 'Common practice, from memory: no one maker’s list. The last column is the word we use.',
	head: ['You may see', 'It means', 'We say'],
	/** Between the forms in a cell. */
	comma: ', ',
} as const;
