import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { backWords } from '#words/bench/index.ts';
import type { KeyedPanel as Panel, PanelKey } from '../../../shared/profile/index.ts';
import type { Sight } from '../../../sim/rig/index.ts';
import { keyName, panelTitle } from '../../wording/index.ts';
import { keyFor } from './fixtureBack.ts';
import { type HeldKeys, useHeldKeys } from './useHeldKeys.ts';
import { later, useBench } from './view.ts';

const SpokenPanel = later(() => import('./SpokenPanel.tsx'), true);

interface Props {
	fixture: string;
	name: string;
	panel: Panel;
	display: Extract<Sight['display'], { kind: 'keyed' }>;
}

/** A display and its keys. Keys are held by finger, mouse and keyboard alike; the display takes the keyboard's own keys. */
export function KeyedPanel({ fixture, name, panel, display }: Props): JSX.Element {
	const { can, store } = useBench();
	const title = panelTitle(store.rig, fixture, display);
	const keys = useHeldKeys(fixture);
	// in place before the first press, so that a screen reader hears what comes of it
	const [near, come] = useState(false);

	const press = (event: KeyboardEvent, act: (key: PanelKey) => void) => {
		const key = keyFor(event.key, panel.keys);
		if (!key || !can('panel') || event.ctrlKey || event.altKey || event.metaKey) return;
		event.preventDefault();
		if (!event.repeat) act(key);
	};
	return (
		<fieldset class="panel" onFocusIn={() => come(true)}>
			<legend class="visually-hidden">{backWords.panel(name)}</legend>
			{/* biome-ignore lint/a11y/useSemanticElements: a fieldset within the fieldset would be read out twice */}
			<div
				class={`display display-${panel.kind}`}
				data-lit={display.lit}
				data-state={display.state}
				// biome-ignore lint/a11y/noNoninteractiveTabindex: it takes the keyboard for the whole panel, as the hint below it says
				tabIndex={0}
				role="group"
				aria-label={backWords.display(name)}
				aria-describedby={`${fixture}-keys`}
				onKeyDown={(event) => press(event, keys.down)}
				onKeyUp={(event) => press(event, keys.up)}
				onBlur={keys.release}
			>
				{display.lines.map((line, i) => (
					<span key={i} class="display-line">
						{line}
					</span>
				))}
			</div>
			{/* a screen reader hears it from the panel's own speech */}
			<p class="display-title" aria-hidden="true">
				{title}
			</p>
			<div class="keys">
				{panel.keys.map((key) => (
					<KeyButton key={key} name={key} label={keyName(panel, key)} keys={keys} off={!can('panel')} />
				))}
			</div>
			<p class="keys-hint" id={`${fixture}-keys`}>
				{backWords.keysHint(panel.keys, (key) => keyName(panel, key))}
			</p>
			{near && <SpokenPanel fixture={fixture} />}
		</fieldset>
	);
}

interface KeyProps {
	name: PanelKey;
	/** What is printed on it. */
	label: string;
	keys: HeldKeys;
	off: boolean;
}

function KeyButton({ name, label, keys, off }: KeyProps): JSX.Element {
	// what only clicks, as some screen readers do, is a tap; a finger or a key has been told already
	const told = useRef(false);
	const down = () => {
		told.current = true;
		keys.down(name);
	};
	const isPress = (event: KeyboardEvent) => event.key === 'Enter' || event.key === ' ';
	return (
		<button
			type="button"
			class="key"
			disabled={off}
			data-key={name}
			data-buzz="press"
			onPointerDown={(event) => {
				if (event.button !== 0) return;
				event.currentTarget.setPointerCapture(event.pointerId);
				down();
			}}
			onPointerUp={() => keys.up(name)}
			onPointerCancel={() => {
				keys.up(name);
				told.current = false;
			}}
			onLostPointerCapture={() => keys.up(name)}
			onContextMenu={(event) => event.preventDefault()}
			onKeyDown={(event) => {
				if (!isPress(event)) return;
				event.preventDefault();
				if (!event.repeat) down();
			}}
			onKeyUp={(event) => {
				if (!isPress(event)) return;
				event.preventDefault();
				keys.up(name);
				told.current = false;
			}}
			onBlur={() => keys.up(name)}
			onClick={() => {
				if (!told.current) keys.tap(name);
				told.current = false;
			}}
		>
			{label}
		</button>
	);
}
