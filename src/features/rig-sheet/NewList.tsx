import type { JSX } from 'preact';
import type { Plan } from '../../../shared/plan/index.ts';
import { emptyOne } from './begin.ts';
import Paste from './Paste.tsx';

/** A plan begun from a pasted list. */
export default function NewList(props: { onPlan: (plan: Plan) => void; onClose: () => void }): JSX.Element {
	return <Paste plan={emptyOne()} onAdd={props.onPlan} onClose={props.onClose} />;
}
