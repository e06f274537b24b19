/** Words for what a hand at the sockets holds. */
export const handWords = {
	fresh: (cable: string, port: string) => `A ${cable} is plugged into ${port}. Press the socket for its other end.`,
	end: (cable: string) => `You hold a loose end of ${cable}. Press the socket it goes into.`,
	leave: 'Leave the end loose',
	terminate: 'Fit a terminator there instead',
	putAway: 'Put it away',
	lift: 'Take the cable away',
	letHang: 'Leave it loose',
} as const;

/** Words for cables and terminators as a list. */
export const cableWords = {
	kinds: { data: 'data cable', microphone: 'microphone cable' },
	metres: (length: number) => `${length} m`,
	next: {
		kind: 'Kind of the next cable',
		length: 'Its length in metres',
		badLength: 'A cable is 0.1 to 2000 metres long. Type a number, such as 5.',
	},
	hint: 'Press a free socket to plug a cable in, then another for its other end. Press a plugged one to pull it out.',
	list: 'Every cable',
	none: 'No cables yet.',
	ends: { from: 'First end', to: 'Second end' },
	loose: 'hangs loose',
	unplug: 'Unplug',
	unplugEnd: (cable: string, port: string) => `Unplug ${cable} from ${port}`,
	lift: 'Take away',
	liftOne: (cable: string) => `Take away ${cable}`,
	plugIntoOf: (cable: string, end: string) => `Plug ${end} of ${cable} into`,
	lay: 'Run a cable',
	layFrom: 'From',
	layTo: 'To',
	layDo: 'Run it',
	terminators: 'Terminators',
	fit: 'Fit',
	fitIn: 'Fit a terminator in',
	remove: (port: string) => `Take out of ${port}`,
	choose: 'Choose a socket',
} as const;
