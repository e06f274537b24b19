import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { remoteWords } from '#words/bench/index.ts';
import type { RemoteButton } from '../../../sim/event/index.ts';
import { Button, Toggle } from '../../ui/index.ts';
import { useRig } from '../rig/index.ts';
import { namedButtons, PERSON, sightLines } from './remote.ts';
import { useBench } from './view.ts';

const PLAIN = ['light', 'dark', 'brighter', 'dimmer', 'faster', 'slower'] as const;

/** The remote: who is in sight of it, its code and battery, its buttons. */
export default function Remote(): JSX.Element {
	const { store, tell, free } = useBench();
	useRig(store);
	const codeId = useId();
	const { gear } = store.rig;
	const { remote } = gear;
	if (!remote) return <p>{remoteWords.none}</p>;
	const lines = sightLines(gear);
	if (lines.length === 0) return <p>{remoteWords.noSensors}</p>;
	const press = (button: RemoteButton, name: string) => {
		if (store.send({ type: 'remote.press', button })) tell(remoteWords.sent(name));
	};
	return (
		<div class="remote">
			<Plan />
			{free && (
				<>
					<ul class="remote-sight" aria-label={remoteWords.sight}>
						{lines.map(({ fixture, name, hidden }) => (
							<li key={fixture}>
								<Toggle
									label={remoteWords.hide(name)}
									words={remoteWords.hideWords}
									on={hidden}
									onChange={(next) => store.send({ type: 'sight.block', fixture, hidden: next })}
								/>
							</li>
						))}
					</ul>
					<div class="remote-set">
						<div class="field">
							<label for={codeId}>{remoteWords.code}</label>
							<select
								id={codeId}
								value={remote.code}
								onChange={(event) =>
									store.send({ type: 'remote.become', ...remote, code: Number(event.currentTarget.value) })
								}
							>
								{[1, 2, 3, 4].map((code) => (
									<option key={code} value={code}>
										{code}
									</option>
								))}
							</select>
						</div>
						<Toggle
							label={remoteWords.battery}
							words={remoteWords.batteryWords}
							on={remote.battery}
							onChange={(battery) => store.send({ type: 'remote.become', ...remote, battery })}
						/>
					</div>
				</>
			)}
			<div class="remote-keys">
				{PLAIN.map((button) => (
					<Button key={button} onClick={() => press(button, remoteWords.names[button])}>
						{remoteWords.names[button]}
					</Button>
				))}
			</div>
			{(['held', 'programme'] as const).map((kind) => (
				<fieldset key={kind} class="remote-named">
					<legend>{kind === 'held' ? remoteWords.held : remoteWords.programmes}</legend>
					{namedButtons(gear, kind).map(({ button, name }) => (
						<Button key={button} onClick={() => press(button, name)}>
							{name}
						</Button>
					))}
				</fieldset>
			))}
		</div>
	);
}

/** From above: the wall at the top, fixtures before it, the person with the remote at the bottom. */
function Plan(): JSX.Element {
	const { store } = useBench();
	const { width } = store.rig.sheet.hall;
	const lines = sightLines(store.rig.gear);
	const me = { x: (width * 100) / 2, y: PERSON * 100 };
	return (
		<svg
			class="plan"
			viewBox={`-40 -20 ${width * 100 + 80} ${PERSON * 100 + 120}`}
			role="img"
			aria-label={remoteWords.plan}
		>
			<path class="plan-wall" d={`M-20 0H${width * 100 + 20}`} />
			{lines.map(({ fixture, number, x, y, hidden }) => {
				const at = { x: x * 100, y: y * 100 };
				const block = { x: at.x + (me.x - at.x) * 0.3, y: at.y + (me.y - at.y) * 0.3 };
				return (
					<g key={fixture} data-hidden={hidden}>
						<path class="plan-sight" d={`M${me.x} ${me.y}L${hidden ? block.x : at.x} ${hidden ? block.y : at.y}`} />
						{hidden && <rect class="plan-block" x={block.x - 70} y={block.y - 22} width="140" height="44" rx="4" />}
						<circle class="plan-lamp" cx={at.x} cy={at.y} r="52" />
						<text class="plan-number" x={at.x} y={at.y + 19} text-anchor="middle">
							{number}
						</text>
					</g>
				);
			})}
			<circle class="plan-me" cx={me.x} cy={me.y} r="56" />
			<text class="plan-you" x={me.x + 80} y={me.y + 20}>
				{remoteWords.you}
			</text>
		</svg>
	);
}
