import type { ComponentChildren, JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { planWords, ruleWords } from '#words/plan/index.ts';
import {
	awgFor,
	BREAKER_CURVES,
	type BreakerCurve,
	fedWithin,
	isOnBattery,
	PACK_ORDERS,
	type Packed,
	type Plan,
	packed,
	profileOf,
	US_VOLTS,
	USUAL_VOLTS,
	usualBreakers,
} from '../../../shared/plan/index.ts';
import { COPPER_OHMS } from '../../../shared/power/index.ts';
import { Button, Live, Toggle } from '../../ui/index.ts';
import { usSays } from './figureSays.ts';
import { NumberBox } from './Rows.tsx';
import type { PlanStore } from './store.ts';

/** Rules by which start addresses are given, what every panel is set to, and what is known of supply and show. */
export function Rules({ store }: { store: PlanStore }): JSX.Element {
	const { plan } = store;
	const [done, tell] = useState<Packed | null>(null);
	const set = (part: Partial<Plan>): void => store.change((before) => fedWithin({ ...before, ...part }));
	const rule = (part: Partial<Plan['rules']>): void => set({ rules: { ...plan.rules, ...part } });
	return (
		<>
			<details class="rig-fold" open>
				<summary class="fold-line">{planWords.rules}</summary>
				<div class="rig-fields">
					<Pick label={ruleWords.order} value={plan.rules.order} onPick={(order) => rule({ order })}>
						{PACK_ORDERS.map((order) => (
							<option key={order} value={order}>
								{ruleWords.orders[order]}
							</option>
						))}
					</Pick>
					<Pick label={ruleWords.step} value={String(plan.rules.step)} onPick={(step) => rule({ step: Number(step) })}>
						{Object.entries(ruleWords.steps).map(([step, words]) => (
							<option key={step} value={step}>
								{words}
							</option>
						))}
					</Pick>
					<NumberBox
						label={ruleWords.universe}
						value={plan.rules.universe}
						most={63999}
						onNumber={(universe) => rule({ universe })}
					/>
					<NumberBox
						label={ruleWords.gap}
						value={plan.rules.gap}
						least={0}
						most={100}
						onNumber={(gap) => rule({ gap })}
					/>
				</div>
				<Button
					look="main"
					disabled={plan.rows.length === 0 || plan.source === 'leader'}
					onClick={() => {
						const { plan: next, packing } = packed(plan);
						store.change(() => next);
						tell(packing);
					}}
				>
					{ruleWords.pack}
				</Button>
				<p aria-hidden="true">{done && packedWords(done)}</p>
				<Live text={done ? packedWords(done) : ''} />
				<div class="rig-fields">
					<Pick label={ruleWords.source} value={plan.source} onPick={(source) => set({ source })}>
						<option value="desk">{ruleWords.sources.desk}</option>
						<option value="leader">{ruleWords.sources.leader}</option>
					</Pick>
					<Pick label={ruleWords.loss} value={plan.loss} onPick={(loss) => set({ loss })}>
						{(['hold', 'dark', 'programme'] as const).map((loss) => (
							<option key={loss} value={loss}>
								{ruleWords.losses[loss]}
							</option>
						))}
					</Pick>
				</div>
				<Toggle
					label={ruleWords.lock}
					on={plan.lock === 'on'}
					onChange={(isOn) => set({ lock: isOn ? 'on' : 'off' })}
				/>
			</details>
			<Supply store={store} />
		</>
	);
}

const packedWords = ({ universes, isFewest, unplaced }: Packed): string =>
	[
		ruleWords.packed(universes),
		isFewest ? '' : ruleWords.notFewest,
		unplaced.length > 0 ? ruleWords.unplaced(unplaced.length) : '',
	]
		.filter(Boolean)
		.join(' ');

function Supply({ store }: { store: PlanStore }): JSX.Element {
	const { plan } = store;
	const isUs = plan.supply.volts === US_VOLTS;
	const supply = (part: Partial<Plan['supply']>): void =>
		store.change((before) => ({ ...before, supply: { ...before.supply, ...part } }));
	const show = (part: Partial<Plan['show']>): void =>
		store.change((before) => ({ ...before, show: { ...before.show, ...part } }));
	const weigh = (kilograms: Plan['kilograms']): void => store.change((before) => ({ ...before, kilograms }));
	const surges = (surge: Readonly<Record<string, number>>): void => store.change((before) => ({ ...before, surge }));
	const onMains = [...new Set(plan.rows.flatMap((row) => (isOnBattery(plan, row) ? [] : [row.profile])))];
	const hung = [...new Set(plan.rows.flatMap(({ place, profile }) => (place.overhead ? [profile] : [])))];
	return (
		<details class="rig-fold">
			<summary class="fold-line">{ruleWords.supply}</summary>
			{isUs && <p>{ruleWords.us}</p>}
			<div class="rig-fields">
				<Volts volts={plan.supply.volts} onVolts={(volts) => supply({ volts })} />
				{usSays(plan) !== '' && <p class="rig-soft">{usSays(plan)}</p>}
				<NumberBox
					label={ruleWords.powerFactor}
					value={plan.supply.powerFactor}
					least={0.05}
					most={1}
					isWhole={false}
					onNumber={(powerFactor) => supply({ powerFactor })}
					onNone={() => supply({ powerFactor: null })}
				/>
				<NumberBox
					label={ruleWords.breaker}
					value={plan.supply.breaker}
					most={400}
					offers={usualBreakers(plan.supply.volts)}
					isWhole={false}
					onNumber={(breaker) => supply({ breaker })}
					onNone={() => supply({ breaker: null })}
				/>
				{(!isUs || plan.supply.curve) && (
					<Pick
						label={ruleWords.curve}
						value={plan.supply.curve ?? ''}
						onPick={(curve: BreakerCurve | '') => supply({ curve: curve === '' ? null : curve })}
					>
						<option value="">{ruleWords.noArea}</option>
						{BREAKER_CURVES.map((curve) => (
							<option key={curve} value={curve}>
								{curve}
							</option>
						))}
					</Pick>
				)}
				<NumberBox
					label={ruleWords.link}
					value={plan.supply.link ?? null}
					most={400}
					isWhole={false}
					onNumber={(link) => supply({ link })}
					onNone={() => supply({ link: null })}
				/>
				<p class="rig-soft">{ruleWords.plugLess}</p>
				<Pick
					label={isUs ? ruleWords.areaUs : ruleWords.area}
					value={plan.supply.area === null ? '' : String(plan.supply.area)}
					onPick={(area) => supply({ area: area === '' ? null : Number(area) })}
				>
					<option value="">{ruleWords.noArea}</option>
					{Object.keys(COPPER_OHMS)
						.toSorted((a, b) => Number(a) - Number(b))
						.map((area) => (
							<option key={area} value={area}>
								{ruleWords.areaOf(area, isUs ? awgFor(Number(area)) : null)}
							</option>
						))}
				</Pick>
				{isUs && <p class="rig-soft">{ruleWords.areaNote}</p>}
				<NumberBox
					label={ruleWords.cable}
					value={plan.supply.metres}
					least={0}
					most={1000}
					isWhole={false}
					onNumber={(metres) => supply({ metres })}
					onNone={() => supply({ metres: null })}
				/>
				<NumberBox
					label={ruleWords.hours}
					value={plan.show.hours}
					least={0}
					most={72}
					isWhole={false}
					onNumber={(hours) => show({ hours })}
				/>
				<NumberBox
					label={ruleWords.look}
					value={Math.round(plan.show.look * 100)}
					least={0}
					most={100}
					onNumber={(percent) => show({ look: percent / 100 })}
				/>
				{hung.map((id) => (
					<NumberBox
						key={id}
						label={ruleWords.kilograms(profileOf(plan, id)?.name ?? id, isUs)}
						value={plan.kilograms[id] ?? null}
						least={0.1}
						most={500}
						isWhole={false}
						onNumber={(kilograms) => weigh({ ...plan.kilograms, [id]: kilograms })}
						onNone={() => weigh(without(plan.kilograms, id))}
					/>
				))}
				{onMains.map((id) => (
					<NumberBox
						key={`surge ${id}`}
						label={ruleWords.surge(profileOf(plan, id)?.name ?? id)}
						value={plan.surge?.[id] ?? null}
						least={0.1}
						most={2000}
						isWhole={false}
						onNumber={(peak) => surges({ ...plan.surge, [id]: peak })}
						onNone={() => surges(without(plan.surge ?? {}, id))}
					/>
				))}
			</div>
		</details>
	);
}

/** The usual voltages to choose from, and a box for any other. */
function Volts({ volts, onVolts }: { volts: number; onVolts: (volts: number) => void }): JSX.Element {
	const usual = USUAL_VOLTS.find((each) => each === volts);
	const [isOther, setOther] = useState(usual === undefined);
	const isTyped = isOther || usual === undefined;
	return (
		<>
			<Pick
				label={ruleWords.volts}
				value={isTyped ? 'other' : String(usual)}
				onPick={(picked: string) => {
					setOther(picked === 'other');
					if (picked !== 'other') onVolts(Number(picked));
				}}
			>
				{USUAL_VOLTS.map((each) => (
					<option key={each} value={String(each)}>
						{ruleWords.voltsOf(each)}
					</option>
				))}
				<option value="other">{ruleWords.other}</option>
			</Pick>
			{isTyped && (
				<NumberBox
					label={ruleWords.otherVolts}
					hint={ruleWords.otherVoltsHint}
					value={volts}
					most={500}
					onNumber={onVolts}
				/>
			)}
		</>
	);
}

const without = (all: Readonly<Record<string, number>>, id: string): Readonly<Record<string, number>> =>
	Object.fromEntries(Object.entries(all).filter(([its]) => its !== id));

interface PickProps<T extends string> {
	label: string;
	value: T;
	onPick: (value: T) => void;
	children: ComponentChildren;
}

function Pick<T extends string>({ label, value, onPick, children }: PickProps<T>): JSX.Element {
	const id = useId();
	return (
		<div class="rig-field">
			<label for={id}>{label}</label>
			<select id={id} value={value} onChange={(event) => onPick(event.currentTarget.value as T)}>
				{children}
			</select>
		</div>
	);
}
