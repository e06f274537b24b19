import type { JSX } from 'preact';

interface Props {
	line: string;
	isOpen: boolean;
	onPress: () => void;
}

/** On a phone, the line in place of what is folded there: see `practice.css`. Elsewhere nothing is folded, and it is not there. */
export function OnPhone({ line, isOpen, onPress }: Props): JSX.Element {
	return (
		<button type="button" class="fold-line on-phone" aria-expanded={isOpen} onClick={onPress}>
			{line}
		</button>
	);
}
