/** Where a term comes from: a standard, common practice, or this site. */
export const termSources = {
	trade: 'Common practice of the trade',
	house: 'A word of this site',
	'E1.11': 'ANSI E1.11, levels on a line',
	'E1.20': 'ANSI E1.20, remote device management',
	'E1.31': 'ANSI E1.31, levels over a network',
	'EIA-485': 'EIA-485, the electrical side of the line',
	CIE: 'CIE S 017, the international lighting vocabulary',
	'EN 12464': 'EN 12464-1, lighting of indoor work places (a European standard)',
	'IEC 60050': 'IEC 60050, the international electrical vocabulary',
	'IEC 60529': 'IEC 60529, degrees of protection',
	'IEC 60598': 'IEC 60598-2-17, luminaires for stages and studios',
	'IEC 61008': 'IEC 61008, residual-current devices',
	'IEC 61140': 'IEC 61140, protection against electric shock',
	'IEC 62471': 'IEC 62471, eye and skin safety of lamps',
	WCAG: 'WCAG 2.2, 2.3.1, three flashes',
} as const;

export type TermSource = keyof typeof termSources;

/** How a standard that is credited was come by, where it was not read itself. */
export const termSeen = {
	restated: 'as others restate it',
	memory: 'from memory',
} as const;

/** One word of the trade. */
export interface Term {
	/** Permanent, never used again for something else: lessons, links and saved reviews name it. */
	readonly id: string;
	readonly term: string;
	/** Other words that mean it, or other forms of it: each is linked to it. Plurals with an s need not stand here. */
	readonly forms?: readonly string[];
	/** An everyday word as well: never linked by itself, only where a text asks for it by its id. */
	readonly everyday?: true;
	/** One to three sentences in simple words. */
	readonly says: string;
	readonly from: TermSource;
	/** `read` in the standard itself, or in a text that restates it. A standard is credited from memory where it is neither. */
	readonly seen?: 'read' | 'restated';
	/** Ids of terms to read next. */
	readonly see?: readonly string[];
}
