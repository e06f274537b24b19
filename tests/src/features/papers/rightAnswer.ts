import type { Answer, Item } from '../../../../shared/paper/index.ts';

/** The right answer to a question, as it travels; none to one that is done on the bench. */
export function rightAnswer({ key }: Item): Answer {
	switch (key.form) {
		case 'one':
			return { form: 'one', chose: key.right };
		case 'several':
			return { form: 'several', chose: key.right };
		case 'number':
			return { form: 'number', value: key.within[0]?.from ?? 0 };
		case 'order':
			return { form: 'order', order: key.right };
		case 'switches':
			return { form: 'switches', up: key.up };
		case 'match':
			return { form: 'match', pairs: key.right };
		default:
			throw new Error('done on the bench');
	}
}
