interface Word {
	readonly code: string;
	readonly text: string;
	readonly letter?: string;
}

const word = (code: string, text: string, letter?: string): Word => (letter ? { code, text, letter } : { code, text });

/**
 * What panels call their items and values, by what each is: on four characters, on a text display (16 signs at most), and on a
 * flat panel as one letter. Never a letter A or D there, and no two letters for what it plays.
 */
export const inventPanel = {
	'menu.source': { source: word('SRCE', 'Source'), control: word('CTRL', 'Control'), who: word('WHO', 'Who decides') },
	'menu.data': {
		data: word('DATA', 'Data'),
		line: word('LINE', 'Data line'),
		input: word('INPT', 'Input'),
		connection: word('CNCT', 'Connection'),
	},
	'menu.own': {
		own: word('OWN', 'Own light'),
		alone: word('ALON', 'Stand alone'),
		here: word('HERE', 'Without a desk'),
	},
	'menu.colour': { colour: word('CLRS', 'Colours'), look: word('LOOK', 'Look'), tints: word('TNTS', 'Tints') },
	'menu.programmes': {
		programmes: word('PRGS', 'Programmes'),
		shows: word('SHWS', 'Shows'),
		loops: word('LOOP', 'Loops'),
	},
	'menu.remote': {
		remote: word('RMOT', 'Remote'),
		handset: word('HAND', 'Handset'),
		air: word('AIR', 'Remote control'),
	},
	'menu.upkeep': {
		upkeep: word('KEEP', 'Upkeep'),
		system: word('SYST', 'System'),
		tools: word('TOOL', 'Tools'),
		house: word('HOUS', 'Housekeeping'),
		more: word('MORE', 'More'),
	},
	work: {
		source: word('SRCE', 'Light source'),
		from: word('FROM', 'Light comes from'),
		control: word('CTRL', 'Controlled by'),
		obeys: word('OBEY', 'Obeys'),
		ruled: word('RULE', 'Driven by'),
	},
	lead: {
		lead: word('LEAD', 'Lead others', 'L'),
		sends: word('SEND', 'Sends to others', 'S'),
		head: word('HEAD', 'Head of the row', 'H'),
		commands: word('CMND', 'Commands others', 'C'),
	},
	address: {
		'start-address': word('STRT', 'Start address', 'S'),
		'first-channel': word('FRST', 'First channel', 'F'),
		'start-channel': word('BGIN', 'Start channel', 'B'),
		'begins-at': word('BASE', 'Begins at', 'N'),
		'listens-from': word('LSTN', 'Listens from', 'L'),
	},
	mode: {
		mode: word('MODE', 'Mode', 'M'),
		channels: word('USES', 'Channels used', 'U'),
		personality: word('PRSN', 'Personality', 'P'),
		layout: word('LAYT', 'Layout', 'Y'),
	},
	held: {
		static: word('STAT', 'Static colour', 'C'),
		colour: word('COLR', 'Colour', 'K'),
		hue: word('HUE', 'Hue', 'H'),
		tint: word('TINT', 'Tint', 'T'),
	},
	level: {
		brightness: word('BRIT', 'Brightness', 'B'),
		level: word('LEVL', 'Level', 'L'),
		output: word('OUTP', 'Output', 'O'),
		intensity: word('INTS', 'Intensity', 'I'),
	},
	strobe: {
		rate: word('RATE', 'Flash rate', 'R'),
		strobe: word('STRB', 'Strobe', 'S'),
		flashes: word('FLSH', 'Flashes a second', 'F'),
	},
	programme: {
		programme: word('PROG', 'Programme', 'P'),
		show: word('SHOW', 'Built-in show', 'S'),
		effect: word('EFCT', 'Effect', 'E'),
	},
	speed: { speed: word('SPED', 'Speed', 'V'), pace: word('PACE', 'Pace', 'P'), tempo: word('TMPO', 'Tempo', 'T') },
	hearing: {
		microphone: word('MIC', 'Microphone', 'M'),
		level: word('EAR', 'Mic level', 'E'),
		gain: word('GAIN', 'Mic gain', 'G'),
	},
	loss: {
		loss: word('LOSS', 'Signal loss', 'L'),
		gone: word('GONE', 'Data gone', 'G'),
		none: word('NONE', 'No data', 'N'),
		fails: word('FAIL', 'If data fails', 'F'),
	},
	curve: {
		curve: word('CURV', 'Dimmer curve', 'C'),
		law: word('LAW', 'Dimming law', 'W'),
		bend: word('BEND', 'Dim curve', 'B'),
	},
	limit: {
		highest: word('TOP', 'Highest output'),
		cap: word('CAP', 'Output cap'),
		limit: word('LMIT', 'Output limit'),
	},
	sensor: {
		sensor: word('EYE', 'Remote sensor'),
		remote: word('RECV', 'Remote receiver'),
		listens: word('RLSN', 'Remote listens'),
	},
	code: { code: word('CODE', 'Remote code'), number: word('NUMB', 'Remote number'), pair: word('PAIR', 'Pair with') },
	lock: { lock: word('LOCK', 'Panel lock'), keys: word('KEYS', 'Lock keys'), bolt: word('BOLT', 'Key lock') },
	sleep: {
		off: word('REST', 'Display off'),
		sleep: word('SLEP', 'Display sleep'),
		screen: word('SCRN', 'Screen time'),
	},
	defaults: {
		defaults: word('DFLT', 'Defaults'),
		over: word('OVER', 'Start over'),
		reset: word('RSET', 'Reset all'),
	},
	ask: { sure: word('SURE', 'Sure?'), yes: word('YES?', 'Yes?') },
	follow: {
		follow: word('FOLW', 'Follow', 'F'),
		copy: word('COPY', 'Copy a leader', 'K'),
		join: word('JOIN', 'Join a leader', 'J'),
	},
	'info.charge': {
		charge: word('CHRG', 'Charge left'),
		battery: word('BATT', 'Battery'),
		percent: word('PRCT', 'Battery percent'),
	},
	'info.hours': { hours: word('HRS', 'Hours left'), time: word('TIME', 'Time left') },
	'info.signal': { signal: word('SIGN', 'Signal'), live: word('LIVE', 'Data signal') },
	'info.footprint': { footprint: word('SPAN', 'Footprint'), taken: word('TAKE', 'Channels taken') },
	'work.line': { data: word('DATA', 'Data'), desk: word('DESK', 'Desk'), line: word('LINE', 'Data line') },
	'work.held': {
		static: word('STAT', 'Static colour'),
		own: word('HUE', 'Own colour'),
		fixed: word('FIXD', 'Fixed colour'),
	},
	'work.programme': {
		programme: word('PROG', 'Programme'),
		show: word('SHOW', 'Built-in show'),
		itself: word('SELF', 'By itself'),
	},
	'work.follow': {
		follow: word('FOLW', 'Follow'),
		leader: word('COPY', 'Copies a leader'),
		join: word('JOIN', 'A leader'),
	},
	'onoff.on': { on: word('ON', 'On') },
	'onoff.off': { off: word('OFF', 'Off') },
	'loss.hold': { hold: word('HOLD', 'Hold'), keep: word('KEEP', 'Keep'), stay: word('STAY', 'Stay lit') },
	'loss.dark': { dark: word('DARK', 'Blackout'), out: word('OUT', 'Go dark'), zero: word('ZERO', 'All to zero') },
	'loss.programme': {
		programme: word('PROG', 'Programme'),
		run: word('RUN', 'Run a show'),
		self: word('SELF', 'Own show'),
	},
	'curve.straight': { straight: word('EVEN', 'Straight'), linear: word('LINR', 'Linear') },
	'curve.square': { square: word('SQUA', 'Square'), law: word('SQRL', 'Square law') },
	'curve.soft': { soft: word('SOFT', 'Soft'), gentle: word('GNTL', 'Gentle') },
	'sensor.open': { open: word('OPEN', 'Open'), listens: word('LSTN', 'Listens') },
	'sensor.shut': { shut: word('SHUT', 'Shut'), ignores: word('IGNR', 'Ignores') },
	'sleep.never': { never: word('NEVR', 'Never'), stays: word('STAY', 'Stays lit') },
	'held.red': { red: word('RED', 'Red') },
	'held.green': { green: word('GREN', 'Green') },
	'held.blue': { blue: word('BLUE', 'Blue') },
	'held.amber': { amber: word('AMBR', 'Amber'), gold: word('GOLD', 'Gold') },
	'held.yellow': { yellow: word('YELW', 'Yellow'), lemon: word('LEMN', 'Lemon') },
	'held.orange': { orange: word('ORNG', 'Orange'), sunset: word('SUNS', 'Sunset') },
	'held.cyan': { cyan: word('CYAN', 'Cyan'), aqua: word('AQUA', 'Aqua') },
	'held.turquoise': { turquoise: word('TURQ', 'Turquoise'), sea: word('SEA', 'Sea green') },
	'held.magenta': { magenta: word('MGNT', 'Magenta'), fuchsia: word('FUCH', 'Fuchsia') },
	'held.pink': { pink: word('PINK', 'Pink'), rose: word('ROSE', 'Rose') },
	'held.violet': { violet: word('VIOL', 'Violet'), purple: word('PURP', 'Purple') },
	'held.white': { white: word('WHIT', 'White') },
	'held.warm-white': { warm: word('WARM', 'Warm white'), candle: word('CNDL', 'Candle') },
	'held.cool-white': { cool: word('COOL', 'Cool white'), daylight: word('NOON', 'Daylight') },
	'held.ultraviolet': { ultraviolet: word('ULTR', 'Ultraviolet') },
	'programme.change': {
		change: word('CHNG', 'Colour change'),
		step: word('STEP', 'Colour step'),
		jump: word('JUMP', 'Colour jump'),
	},
	'programme.fade': {
		fade: word('FADE', 'Colour fade'),
		cross: word('MELT', 'Crossfade'),
		flow: word('FLOW', 'Colour flow'),
	},
	'programme.pulse': { pulse: word('PULS', 'Pulse'), breathe: word('BRTH', 'Breathe'), swell: word('SWEL', 'Swell') },
	'programme.strobe': { strobe: word('STRB', 'Strobe'), flashes: word('FLSH', 'Strobe flashes') },
	'programme.step': { step: word('BEAT', 'Sound: colours'), next: word('NEXT', 'Sound: step') },
	'programme.swell': { swell: word('LOUD', 'Sound: swell'), glow: word('GLOW', 'Sound: glow') },
	'programme.flash': { flash: word('CLAP', 'Sound: flash'), hit: word('HIT', 'Sound: hit') },
	'programme.run': { run: word('RACE', 'Sound: run'), chase: word('CHSE', 'Sound: chase') },
} as const;
