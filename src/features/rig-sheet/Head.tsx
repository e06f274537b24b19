import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { planWords } from '#words/plan/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, Dialog, Field } from '../../ui/index.ts';
import { Send } from './goingOut.tsx';
import { useDrawn } from './growing.ts';
import { benchAddress, finderOn } from './handing.ts';
import { Practise } from './lazily.tsx';
import type { PlanStore } from './store.ts';

/** The finder's address once it will begin on a row; null where the device keeps nothing. */
export const finderAt = async (plan: Plan, id: string, row: string): Promise<string | null> =>
	(await finderOn(plan, id, row, DEVICE, Date.now())) ? '/finder/' : null;

interface HeadProps {
	store: PlanStore;
	go: (act: () => Promise<string | null>) => void;
	onClose: () => void;
}

/** The rig's name, and what can be done with all of it. */
export function Head({ store, go, onClose }: HeadProps): JSX.Element {
	const { plan } = store;
	const [open, setOpen] = useState<'send' | 'dark' | 'practise' | 'remove' | null>(null);
	return (
		<div class="rig-head no-print">
			<Field
				label={planWords.name}
				value={plan.name}
				maxLength={60}
				onChange={(event) => {
					const name = event.currentTarget.value.trim();
					if (name !== '') store.change((before) => ({ ...before, name }));
				}}
			/>
			<div class="rig-ways">
				<Button disabled={!store.canUndo} onClick={store.undo}>
					{planWords.undo}
				</Button>
				<Button disabled={plan.rows.length === 0} onClick={() => go(() => benchAddress(plan))}>
					{planWords.onBench}
				</Button>
				<Button disabled={plan.rows.length === 0} onClick={() => setOpen('dark')}>
					{planWords.dark}
				</Button>
				<Button disabled={plan.rows.length === 0} onClick={() => setOpen('practise')}>
					{planWords.practise}
				</Button>
				<Button onClick={() => setOpen('send')}>{planWords.send}</Button>
				<Button look="quiet" onClick={onClose}>
					{planWords.another}
				</Button>
				<Button look="quiet" onClick={() => setOpen('remove')}>
					{planWords.remove}
				</Button>
			</div>
			{open === 'send' && <Send plan={plan} id={store.id} before={store.before} onClose={() => setOpen(null)} />}
			{open === 'dark' && (
				<Dialog open onClose={() => setOpen(null)} title={planWords.darkWhich} closeWords={planWords.close}>
					<DarkOnes
						plan={plan}
						onDark={(id) => {
							setOpen(null);
							go(() => finderAt(plan, store.id, id));
						}}
					/>
				</Dialog>
			)}
			{open === 'practise' && (
				<Dialog open onClose={() => setOpen(null)} title={planWords.practise} closeWords={planWords.close}>
					<Practise plan={plan} />
				</Dialog>
			)}
			{open === 'remove' && (
				<Dialog open onClose={() => setOpen(null)} title={planWords.remove} closeWords={planWords.close}>
					<Button
						onClick={() => {
							store.forget();
							onClose();
						}}
					>
						{planWords.removeSure}
					</Button>
				</Dialog>
			)}
		</div>
	);
}

/** Which light is dark: a button each. */
function DarkOnes({ plan, onDark }: { plan: Plan; onDark: (row: string) => void }): JSX.Element {
	const drawn = useDrawn(
		plan.rows,
		({ id, name }) => (
			<Button key={id} aria-label={planWords.darkGo(name)} onClick={() => onDark(id)}>
				{name}
			</Button>
		),
		[plan],
	);
	return <div class="rig-ways">{drawn}</div>;
}
