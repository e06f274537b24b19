import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { backWords } from '#words/bench/index.ts';
import { panelFrom } from '../../../shared/profile/index.ts';
import { isSwitchedOn } from '../../../sim/fixture/index.ts';
import { Button, Tape, Toggle } from '../../ui/index.ts';
import { fixtureLight } from '../../wording/index.ts';
import { type IndicatorView, indicatorsOf, linkFeeds, mainsChoices } from './fixtureBack.ts';
import { KeyedPanel } from './KeyedPanel.tsx';
import { Socket } from './Socket.tsx';
import { later, useBench, useSeen } from './view.ts';

const DipPanel = later(() => import('./DipPanel.tsx'));

/** The back of the fixture in hand: panel, lamps, sockets, mains, power switch. */
export function FixtureBack({ fixture }: { fixture: string }): JSX.Element | null {
	const { store, why, can } = useBench();
	const [unit, sight, light] = useSeen(({ store: { rig, look } }) => {
		const now = rig.gear.units.get(fixture);
		// what it shows of itself stays the same while only time goes by
		return now ? [now.placed, look(fixture), fixtureLight(rig, fixture), isSwitchedOn(now.state)] : [null, null, ''];
	});
	const { rig } = store;
	const at = rig.gear.units.get(fixture);
	if (!unit || !sight || !at) return null;
	const { profile, state } = at;
	const { name } = unit;
	const { panel } = profile;
	const from = panelFrom(profile);
	const { display } = sight;
	return (
		<section class="back" aria-label={name}>
			<header class="back-head">
				<Tape level={2}>{name}</Tape>
				{from !== 'invented' && <p class="back-about">{backWords.from[from]}</p>}
			</header>
			<div class={`case case-${profile.shape}`}>
				{panel.kind === 'dip'
					? display.kind === 'switches' && <DipPanel {...{ fixture, name, panel, display }} />
					: display.kind === 'keyed' && <KeyedPanel key={fixture} {...{ fixture, name, panel, display }} />}
				<ul class="lamps" aria-label={backWords.lamps}>
					{indicatorsOf(sight).map((lamp) => (
						<Indicator key={lamp.id} {...lamp} />
					))}
				</ul>
				<div class="case-foot">
					<div class="case-data">
						<Socket key={`${fixture}:in`} port={`${fixture}:in`} label={backWords.sockets.in} />
						<Socket key={`${fixture}:out`} port={`${fixture}:out`} label={backWords.sockets.out} />
					</div>
					<div class="case-power">
						<MainsLead key={fixture} fixture={fixture} />
						<Toggle
							label={backWords.powerSwitch}
							on={isSwitchedOn(state)}
							disabled={!can('power')}
							onChange={(on) => store.send({ type: 'power.switch', fixture, on })}
						/>
					</div>
				</div>
			</div>
			<p class="back-light">
				<span>{light}</span>
				{why && <Button onClick={() => why(fixture)}>{backWords.why}</Button>}
			</p>
			<p class="back-about">
				<strong>{profile.name}</strong> {profile.about}
			</p>
		</section>
	);
}

/** Where its mains lead goes, and what its link socket feeds. */
function MainsLead({ fixture }: { fixture: string }): JSX.Element {
	const { store, can } = useBench();
	const id = useId();
	useSeen(({ store: { rig } }) => [rig.sheet, ...[...rig.gear.units.values()].map(({ plug }) => plug)]);
	const { rig } = store;
	const plug = rig.gear.units.get(fixture)?.plug ?? 'none';
	const feeds = linkFeeds(rig, fixture);
	return (
		<>
			<label class="case-mains" for={id}>
				<MainsSocket live={plug !== 'none'} />
				{backWords.mainsLead}
			</label>
			<select
				id={id}
				value={plug}
				disabled={!can('mains')}
				onChange={(event) => store.send({ type: 'mains.plug', fixture, into: event.currentTarget.value })}
			>
				{mainsChoices(rig, fixture).map(({ value, words }) => (
					<option key={value} value={value}>
						{words}
					</option>
				))}
			</select>
			{feeds && (
				<p class="case-link">
					<MainsSocket live={feeds.length > 0} />
					{feeds.length > 0 ? backWords.linkFeeds(feeds.join(', ')) : backWords.linkFree}
				</p>
			)}
		</>
	);
}

function Indicator({ id, name, state, look, bars }: IndicatorView): JSX.Element {
	return (
		<li class="lamp" data-lamp={id} data-look={look}>
			{bars === undefined ? (
				<span class="lamp-dot" aria-hidden="true" />
			) : (
				<span class="lamp-bars" aria-hidden="true">
					{[1, 2, 3, 4].map((bar) => (
						<span key={bar} data-on={bar <= bars} />
					))}
				</span>
			)}
			<span class="lamp-name">{name}</span> <span class="lamp-state">{state}</span>
		</li>
	);
}

/** A mains inlet or link, with or without a lead in it. The words beside it say the same. */
function MainsSocket({ live }: { live: boolean }): JSX.Element {
	return (
		<svg class="mains" data-in={live} viewBox="0 0 40 32" width="40" height="32" aria-hidden="true">
			<path class="mains-rim" d="M4 4h32v17l-7 8H11l-7-8z" />
			<path class="mains-pins" d="M12 11v7M20 15v7M28 11v7" />
			<path class="mains-plug" d="M8 8h24v11l-5 6H13l-5-6z" />
		</svg>
	);
}
