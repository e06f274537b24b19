/** A table as it is shown: words only, every figure worked out already. */
export interface ReferenceTable {
	readonly caption: string;
	readonly head: readonly string[];
	/** As many cells a row as there are heads; the first is the row's own head. */
	readonly rows: readonly (readonly string[])[];
	/** Permanent ids of the rows, where links lead to single ones. */
	readonly ids?: readonly string[];
	/** Where the last cell of each row leads. */
	readonly links?: readonly string[];
	/** Parts it is folded into, side by side where there is room; 1 unless told. */
	readonly fold?: number;
	/** `grid`: cells are figures, set close. `cards`: cells are sentences, and on a phone each row is a card. `text` unless told. */
	readonly look?: 'text' | 'grid' | 'cards';
}

/** A heading with what stands under it. */
export interface ReferenceSection {
	/** Permanent: links lead to it. */
	readonly id: string;
	readonly heading: string;
	readonly says: readonly string[];
	readonly tables: readonly ReferenceTable[];
	/** Ids of cautions that go with what is told here. */
	readonly cautions?: readonly string[];
}

/** One page of the reference. */
export interface ReferencePage {
	/** Permanent: its address. */
	readonly id: 'addresses' | 'levels' | 'line' | 'fixtures' | 'faults' | 'elsewhere' | 'cautions';
	readonly heading: string;
	readonly lead: string;
	readonly sections: readonly ReferenceSection[];
}
