/** Where a weight comes from. None has a published source so far: one that does would name it. */
type WeightStanding = 'trade' | 'ours';

/** Why the finder takes a fault for as common as it does. The weight itself stands with the fault. */
interface WeightReason {
	readonly standing: WeightStanding;
	/** A sentence or two. */
	readonly why: string;
}

const trade = (why: string): WeightReason => ({ standing: 'trade', why });
const ours = (why: string): WeightReason => ({ standing: 'ours', why });

/** For every fault of the catalogue, by id, why its weight is what it is. */
export const weightReasons: Readonly<Record<string, WeightReason>> = {
	// ---- power and battery
	'switched-off': trade('People switch off to save the battery, and forget one when they set up.'),
	'battery-flat': trade('It wasn’t charged, or it ran all day. The first thing most crews look for.'),
	'battery-low': trade('As flat, caught a little sooner.'),
	'battery-worn': ours('Old packs in a hire stock. Fewer than those that just weren’t charged.'),
	'charger-dead': ours('Parts break less often than people forget.'),
	'mains-unplugged': trade('A lead is left out, or a foot pulls it out.'),
	'hall-power-off': ours('It takes out much more than one light, so it’s soon seen and told.'),
	'fuse-blown': ours('A fuse goes now and then. Most dark lights have a simpler cause.'),
	'supply-dead': ours('Parts break less often than people forget.'),
	'socket-dead': ours('One bad socket among many. Rare in a hall that is looked after.'),
	'lead-dead': trade('Leads get pulled, bent and run over, so they go before sockets do.'),
	'breaker-off': trade('Too much on one circuit, or damp outdoors. It takes more than one light with it.'),

	// ---- settings at a panel
	'wrong-mode': trade('It comes back from another job in another mode. With the address, the mistake made most.'),
	'wrong-address': trade('The mistake made most: it’s set by hand, on every light, for every job.'),
	'left-on-held': trade('Somebody tried the light by hand, and nobody set it back.'),
	'left-on-programme': trade('As a static colour: a show of its own was left running.'),
	'left-on-sound': ours('As a programme. Fewer people pick this one.'),
	'follower-under-desk': trade('Used as a follower at the last job, and not set back.'),
	'follower-on-line': ours('As the one before, the other way round.'),
	'leader-not-leading': trade('One light must lead, and it’s easy to set it up like the rest.'),
	'second-leader': ours('It takes two mistakes: one light set wrong, and nobody looked.'),
	'leader-under-desk': trade('It led at the last job, and was put under a desk as it was.'),
	'limit-low': ours('A limit deep in the menu. Few people go there.'),
	'level-down': ours('The static colour was turned down for a quiet moment.'),
	'strobe-left-on': ours('Strobe is tried for fun, and left on.'),
	'strobe-programme': ours('As strobe left on, and a little deeper in the menu.'),
	'wrong-held': ours('The static colour of the last job.'),
	'curve-wrong': ours('Deep in the menu, and most lights stay as the maker set them.'),
	'loss-set-wrong': ours('Deep in the menu. It only shows once data stops.'),
	'hearing-nothing': ours('The sensitivity is turned down, or the room is quiet.'),
	'back-at-defaults': ours('Somebody reset it to get out of trouble.'),
	'one-switch-wrong': trade('Small switches are easy to miscount. As common as a wrong address.'),
	'tenth-switch-up': trade('The switch that turns addresses into something else gets pushed by mistake.'),
	'function-switch-wrong': trade('As an address switch: one of a row of small switches.'),
	'tenth-switch-down': trade('It’s meant to be up here, and people set the address and no more.'),
	'slide-wrong': ours('A slide is moved in the case, or left from the last job.'),

	// ---- the remote
	'sensor-shut': ours('Switched off on purpose once, and not back on.'),
	'sensor-left-open': ours('Left on after the set-up, so that any remote can change it.'),
	'out-of-sight': trade('Remotes like these need a clear view, and lights hang behind things.'),
	'remote-battery-flat': trade('It lies in a box for months. The second thing to look at.'),
	'remote-other-code': ours('A key pressed by mistake. Not every remote can do it.'),
	'fixture-other-code': ours('Set in groups for the last job. A little more common than at the remote.'),
	'sensor-dead': ours('Parts break less often than people forget.'),
	'sensor-covered': ours('Tape, a label or a drape in front of it.'),

	// ---- the line
	'cable-out': trade('A plug that isn’t quite in, or was pulled. The fault of a line that crews meet most.'),
	'cable-dead': trade('Cables get stepped on and pulled. Most crews find a bad one now and then.'),
	'minus-open': ours('One broken wire of three. A share of all bad cables.'),
	'plus-open': ours('One broken wire of three. A share of all bad cables.'),
	'common-open': ours('As the other wires, but it often does no harm, so it’s found less.'),
	'wires-swapped': trade('A plug was fixed at the wrong pins, or an adapter crosses them.'),
	'microphone-cable': trade('It fits, so it’s used. On a short line it often works.'),
	'cable-too-long': ours('It takes a drum of cable where a short one would do.'),
	'terminator-missing': trade('Small, easy to lose, and on a short line nobody misses it.'),
	'universes-exchanged': trade('Two alike plugs at the desk, and two alike sockets.'),
	'bad-socket-in': ours('Sockets wear, but less than cables do.'),
	'bad-socket-out': ours('Sockets wear, but less than cables do.'),
	'too-many-loads': ours('A bad input that loads the line. We know of few.'),
	'split-without-splitter': trade('A Y lead seems to work, so people use one.'),
	'splitter-off': ours('A box on the floor with a plug of its own. It takes a whole branch with it.'),
	'splitter-output-dead': ours('Parts break less often than people forget.'),
	'second-source': ours('Somebody else’s box is still on the line. Rare, and hard to see.'),

	// ---- at the desk
	'output-off': ours('An output is switched off. It shows on every light of the line.'),
	'master-down': trade('The first thing to look at on any desk: a grand master or blackout.'),
	'wrong-universe': trade('Set up once, by hand. A mistake shows on every light of the line.'),
	'patched-elsewhere': trade('The desk and the light don’t agree. A patch is typed less often than an address is set.'),
	'patched-other-universe': ours('As a wrong address in the patch, but one figure among few.'),
	'levels-down': trade('Nobody brought the fader up.'),
	'wrong-colour-slots': ours('The colours come in another order than the desk thinks.'),
	'function-left-up': trade('A fader that starts a show or a strobe is left up from a test.'),
	'strobe-left-up': ours('As the one before. One fader of those.'),
	'shutter-closed': ours('Only lights with a shutter, where zero means closed.'),
	'patched-other-mode': trade('One more place where mode must agree. Less often than at the light.'),
	'desk-blind': ours('The desk is in blind or preview, and nobody saw the sign.'),
	'desk-frozen': ours('Software hangs now and then. Rare at any one gig.'),
	'start-code-wrong': ours('A setting that hardly anybody touches.'),

	// ---- the fixture itself, and the light on its way out
	'emitter-dead': trade('One colour goes before the rest. Old stock has some.'),
	'receiver-dead': ours('Parts break less often than people forget.'),
	'folded-back': ours('It turns itself down in the heat: outdoors, or packed in close.'),
	'display-dead': ours('The light still works, so it’s fixed late. Yet there are few.'),
	'microphone-dead': ours('Parts break less often than people forget.'),
	'lens-covered': trade('A drape, a flag, tape or a gel in front of it.'),
	'ultraviolet-alone': ours('All other colours are down, and what is left is hard to see.'),
};
