import type { Plugin } from 'vite';
import { type Cut, cutCode } from './cut.ts';

/**
 * What the fixture machines never come to in XState 5.33.3: actors (they are stepped, never run), things invoked or delayed,
 * history, final states, routes, tags, what is done on coming and going, targets by id, events by pattern, guards made of guards,
 * messages to others, inspection, a machine as kept data, and what is said of a chart that is wrong. package.json holds the library to that version, and a build stops where something
 * named here is not in it. A test holds the machines to those of the whole library.
 */
const CUTS: Readonly<Record<string, Cut>> = {
	raise: {
		empty: [
			'Actor',
			'Mailbox',
			'addProperAncestorStatesToEnter',
			'cancel',
			'createErrorActorEvent',
			'createSystem',
			'executeRaise',
			'formatRouteTransitions',
			'getMachineOutput',
			'getPersistedSnapshot',
			'getStateNodes',
			'machineSnapshotCan',
			'machineSnapshotGetMeta',
			'machineSnapshotHasTag',
			'machineSnapshotMatches',
			'machineSnapshotToJSON',
			'resolveHistoryDefaultTransition',
			'resolveReferencedActor',
			'resolveStateValue',
			'spawnChild',
			'stopChild',
			'stopChildren',
			'toJSON',
			'wildcardCandidates',
		],
		leaveOut: [
			'const defaultOptions =',
			'const symbolObservable =',
			// building a chart
			'if (descriptor === NULL_EVENT)',
			'if (stateNode.config.onDone)',
			'for (const invokeDef of stateNode.invoke)',
			'for (const delayedTransition of stateNode.after)',
			'if (!resolvedTarget && _target)',
			'if (!stateNode.states)',
			"if (typeof target !== 'string')",
			'if (isInternalTarget && !stateNode.parent)',
			// choosing a transition
			'if (!isInline && !resolved)',
			"if (typeof resolved !== 'function')",
			// taking it
			'actorScope.actionExecutor =',
			'const originalExecutor =',
			'for (const historyNode of getHistoryNodes(exitStateNode))',
			'nextSnapshot = resolveActionsAndContext(nextSnapshot, event, actorScope, [...s.exit,',
			'actions.push(...stateNodeToEnter.entry)',
			'for (const invokeDef of stateNodeToEnter.invoke)',
			'if (statesForDefaultEntry.has(stateNodeToEnter))',
			'nextSnapshot = resolveActionsAndContext(nextSnapshot, event, actorScope, actions, internalQueue, stateNodeToEnter',
			"if (stateNodeToEnter.type === 'final')",
			"if (nextState.status === 'done')",
			"if (!resolvedAction || !('resolve' in resolvedAction))",
			"if ('retryResolve' in builtinAction)",
			"if ('execute' in builtinAction)",
			'retries?.forEach(',
			// going on until it rests
			'actorScope.system._sendInspectionEvent(',
			'if (event.type === XSTATE_STOP)',
			'const isErr =',
			'if (isErr &&',
			'const maxIterations =',
			'let iterationCount =',
			'iterationCount++',
			'if (iterationCount > maxIterations)',
			"if (nextSnapshot.status !== 'active')",
		],
		instead: {
			'isHistoryNode(targetNode)': 'false',
			'isHistoryNode(stateNode)': 'false',
			'isStateId(target)': 'false',
			'isStateId(stateKey)': 'false',
			"typeof statePath === 'string' && isStateId(statePath)": 'false',
			"descriptor.endsWith('.*')": 'false',
			"'check' in resolved": 'false',
			'isHistoryNode(s)': 'false',
			'isHistoryNode(sn)': 'false',
			'isHistoryNode(child)': 'false',
			'isHistoryNode(initialState)': 'false',
			'exactMatch ? [...exactMatch, ...wildcardCandidates] : wildcardCandidates': 'exactMatch ?? []',
			'toStatePath(statePath).slice()': 'statePath.split(STATE_DELIMITER)',
			'new Set(config._nodes.flatMap(sn => sn.tags))': 'null',
		},
	},
	StateMachine: {
		empty: [],
		leaveOut: [
			'get after()',
			'get definition()',
			'get events()',
			'get invoke()',
			'get on()',
			'get ownEvents()',
			'getPersistedSnapshot(',
			'getStateNodeById(',
			'microstep(',
			'provide(',
			'resolveState(',
			'restoreSnapshot(',
			'start(',
			'this.getPersistedSnapshot =',
			'this.restoreSnapshot =',
			'this.start =',
			...[
				'description',
				'entry',
				'events',
				'exit',
				'history',
				'meta',
				'options',
				'output',
				'schemas',
				'tags',
				'version',
			].map((name) => `this.${name} =`),
			'toJSON()',
			"if (this.type === 'compound' && !this.config.initial)",
		],
		instead: {},
	},
	assign: { empty: ['createSpawner'], leaveOut: ['if (!snapshot.context)'], instead: {} },
	log: {
		empty: ['emit', 'log', 'sendParent', 'sendTo'],
		leaveOut: [
			'enqueue.cancel =',
			'enqueue.emit =',
			'enqueue.sendParent =',
			'enqueue.sendTo =',
			'enqueue.spawnChild =',
			'enqueue.stopChild =',
		],
		instead: {},
	},
	xstate: {
		empty: [
			'cancel',
			'createAction',
			'createStateConfig',
			'emit',
			'extend',
			'log',
			'sendTo',
			'spawnChild',
			'stopChild',
		],
		leaveOut: [],
		instead: {},
	},
};

const FILE = /[\\/]xstate[\\/]dist[\\/](\w+?)(?:-[0-9a-f]{8})?\.esm\.js$/;

/** Leaves out of the machine library what is never reached. */
export function leanMachine(): Plugin {
	return {
		name: 'prep-bay-lean-machine',
		transform(code, id) {
			const cut = CUTS[FILE.exec(id)?.[1] ?? ''];
			return cut ? { code: cutCode(code, this.parse(code), cut), map: null } : null;
		},
	};
}
