/** What charts call their channels and bands, by what each is. */
export const inventChart = {
	'slot.intensity': { intensity: 'Intensity', dimmer: 'Dimmer', master: 'Master dimmer', brightness: 'Brightness' },
	'slot.shutter': { shutter: 'Shutter', strobe: 'Strobe', both: 'Shutter and strobe' },
	'slot.colours': { static: 'Static colours', preset: 'Preset colours', ready: 'Ready-made colours' },
	'slot.function': { function: 'Function', programmes: 'Programmes', shows: 'Built-in shows' },
	'slot.speed': { speed: 'Speed', programme: 'Programme speed', pace: 'Pace' },
	'slot.unused': { none: 'No function', unused: 'Not used', reserved: 'Reserved' },
	'band.open': { open: 'Open', steady: 'Steady', on: 'Light on' },
	'band.closed': { closed: 'Closed', dark: 'Dark', blackout: 'Blackout' },
	'band.strobe': { rising: 'Strobe, slow to fast', faster: 'Strobe, getting faster', rate: 'Strobe rate, low to high' },
	'band.colours': { decide: 'Colour channels decide', set: 'Colours as set', off: 'Off: colour channels' },
	'band.unused': { none: 'No function', unused: 'Not used', reserved: 'Reserved' },
} as const;
