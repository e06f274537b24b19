// Symptom: with another weight, another repair or other seconds every test stayed green. Cause: the numbers by which a finder decides stood
// only where they are used. So they stand here a second time, each seen by eye; all are common practice, no source. Change both, or neither.

/** Id: family, weight, repair, cautions. */
export const CATALOGUE = `
		switched-off: power 6 switch-on
		battery-flat: power 8 fresh-battery batteries
		battery-low: power 6 fresh-battery batteries
		battery-worn: power 3 swap-fixture batteries
		charger-dead: power 2 swap-fixture batteries mains
		mains-unplugged: power 7 plug-mains mains
		hall-power-off: power 2 restore-hall mains
		fuse-blown: power 2 swap-fixture mains
		supply-dead: power 2 swap-fixture mains
		socket-dead: power 2 other-socket mains
		lead-dead: power 3 replace-lead mains
		breaker-off: power 3 ask-breaker mains
		wrong-mode: panel 9 set-panel
		wrong-address: panel 10 set-panel
		left-on-held: panel 8 set-panel
		left-on-programme: panel 7 set-panel
		left-on-sound: panel 5 set-panel
		follower-under-desk: panel 5 set-panel
		follower-on-line: panel 5 set-panel
		leader-not-leading: panel 6 set-panel
		second-leader: panel 4 set-panel
		leader-under-desk: panel 6 set-panel
		limit-low: panel 3 set-panel
		level-down: panel 4 set-panel
		strobe-left-on: panel 4 set-panel flashing
		strobe-programme: panel 3 set-panel flashing
		wrong-held: panel 4 set-panel
		curve-wrong: panel 2 set-panel
		loss-set-wrong: panel 2 set-panel
		hearing-nothing: panel 2 set-panel
		back-at-defaults: panel 3 set-panel
		one-switch-wrong: panel 9 set-switches
		tenth-switch-up: panel 5 set-switches
		function-switch-wrong: panel 6 set-switches
		tenth-switch-down: panel 5 set-switches
		slide-wrong: panel 5 set-switches
		sensor-shut: remote 5 open-sensor
		sensor-left-open: remote 5 open-sensor
		out-of-sight: remote 6 clear-sight
		remote-battery-flat: remote 6 remote-battery
		remote-other-code: remote 3 remote-code
		fixture-other-code: remote 4 set-panel
		sensor-dead: remote 1 swap-fixture
		sensor-covered: remote 3 clear-sensor
		cable-out: line 8 plug-cable
		cable-dead: line 4 replace-cable
		minus-open: line 3 replace-cable
		plus-open: line 3 replace-cable
		common-open: line 2 replace-cable
		wires-swapped: line 3 replace-cable
		microphone-cable: line 4 replace-cable
		cable-too-long: line 1 replace-cable
		terminator-missing: line 6 fit-terminator
		universes-exchanged: line 5 right-way-round
		bad-socket-in: line 2 swap-fixture
		bad-socket-out: line 2 swap-fixture
		too-many-loads: line 1 swap-fixture
		split-without-splitter: line 3 plug-cable
		splitter-off: line 4 box-on mains
		splitter-output-dead: line 2 other-output
		second-source: line 2 lift-stray
		output-off: desk 3 output-on
		master-down: desk 5 raise-master
		wrong-universe: desk 4 set-universe
		patched-elsewhere: desk 6 set-patch
		patched-other-universe: desk 2 set-patch
		levels-down: desk 5 set-levels
		wrong-colour-slots: desk 4 set-levels
		function-left-up: desk 6 set-levels
		strobe-left-up: desk 5 set-levels flashing
		shutter-closed: desk 4 set-levels
		patched-other-mode: desk 6 set-patch
		desk-blind: desk 4 leave-blind
		desk-frozen: desk 1 restart-desk
		start-code-wrong: desk 1 set-start-code
		emitter-dead: fixture 3 swap-fixture
		receiver-dead: fixture 2 swap-fixture
		folded-back: fixture 3 let-cool hot
		display-dead: fixture 1 swap-fixture
		microphone-dead: fixture 1 swap-fixture
		lens-covered: light 3 clear-lens staring hot
		ultraviolet-alone: light 3 set-levels ultraviolet`;

/** Id: seconds | needs | cautions | whether it disturbs a show. */
export const REPAIRS = `
		switch-on: 5 | | false
		fresh-battery: 90 spare-battery | batteries | true
		plug-mains: 20 | mains | false
		restore-hall: 120 | mains | false
		set-panel: 25 | | false
		set-switches: 25 | | false
		open-sensor: 20 | | false
		clear-sight: 20 | | false
		remote-battery: 40 spare-battery | | false
		remote-code: 20 | | false
		plug-cable: 15 | | false
		replace-cable: 75 spare-cable | | true
		fit-terminator: 15 terminator | | false
		right-way-round: 30 desk | | true
		output-on: 10 desk | | false
		raise-master: 5 desk | | false
		set-universe: 30 desk | | true
		set-patch: 45 desk | | true
		set-levels: 15 desk | | false
		let-cool: 600 | hot | false
		clear-lens: 15 | staring hot | false
		swap-fixture: 300 spare-fixture | hanging lifting hot | true
		other-socket: 60 | mains | true
		replace-lead: 90 | mains | true
		ask-breaker: 180 | mains | false
		box-on: 15 | mains | true
		other-output: 30 | | true
		lift-stray: 20 | | true
		leave-blind: 5 desk | | true
		restart-desk: 120 desk | live-show flashing | true
		set-start-code: 30 desk | | true
		clear-sensor: 10 | staring hot | false`;

/** By rig, where each fault can sit, in which way, and its weight there. */
export const PLACES: Readonly<Record<string, string>> = {
	'one-wash': `
		switched-off: wash-1=6
		battery-flat: wash-1=8
		battery-low: wash-1=6
		battery-worn: wash-1=3
		charger-dead: wash-1=2
		mains-unplugged: wash-1=7
		hall-power-off: rig=2
		fuse-blown: wash-1=2
		socket-dead: wash-1=2
		lead-dead: wash-1=3
		breaker-off: rig:right=1.5
		left-on-sound: wash-1:sound=5
		limit-low: wash-1:low=3
		level-down: wash-1:out=2 wash-1:low=2
		strobe-left-on: wash-1:strobe=4
		strobe-programme: wash-1:strobe=3
		wrong-held: wash-1:candle=2 wash-1:white=2
		curve-wrong: wash-1:square=2
		back-at-defaults: wash-1:defaults=3
		sensor-shut: wash-1=5
		out-of-sight: wash-1=6
		remote-battery-flat: remote=6
		remote-other-code: remote=3
		fixture-other-code: wash-1=4
		sensor-dead: wash-1=1
		sensor-covered: wash-1=3
		emitter-dead: wash-1:red=0.5 wash-1:green=0.5 wash-1:blue=0.5 wash-1:white=0.5 wash-1:amber=0.5 wash-1:ultraviolet=0.5
		receiver-dead: wash-1=2
		folded-back: wash-1=3
		display-dead: wash-1=1
		lens-covered: wash-1=3`,
	'leader-and-three': `
		switched-off: wash-1=6 wash-2=6 wash-3=6 wash-4=6
		battery-flat: wash-1=8 wash-2=8 wash-3=8 wash-4=8
		battery-low: wash-1=6 wash-2=6 wash-3=6 wash-4=6
		battery-worn: wash-1=3 wash-2=3 wash-3=3 wash-4=3
		wrong-mode: wash-2:short=4.5 wash-2:long=4.5 wash-3:short=4.5 wash-3:long=4.5 wash-4:short=4.5 wash-4:long=4.5
		left-on-held: wash-2:held=8 wash-3:held=8 wash-4:held=8
		left-on-programme: wash-2:fade=7 wash-3:fade=7 wash-4:fade=7
		left-on-sound: wash-1:sound=5 wash-2:sound=5 wash-3:sound=5 wash-4:sound=5
		follower-on-line: wash-2:line=5 wash-3:line=5 wash-4:line=5
		leader-not-leading: wash-1:off=6
		second-leader: wash-2:on=4 wash-3:on=4 wash-4:on=4
		limit-low: wash-1:low=3 wash-2:low=3 wash-3:low=3 wash-4:low=3
		level-down: wash-1:out=2 wash-1:low=2
		strobe-left-on: wash-1:strobe=4
		strobe-programme: wash-1:strobe=3 wash-2:strobe=3 wash-3:strobe=3 wash-4:strobe=3
		wrong-held: wash-1:candle=2 wash-1:white=2
		curve-wrong: wash-1:square=2 wash-2:square=2 wash-3:square=2 wash-4:square=2
		loss-set-wrong: wash-2:dark=1 wash-2:programme=1 wash-3:dark=1 wash-3:programme=1 wash-4:dark=1 wash-4:programme=1
		back-at-defaults: wash-1:defaults=3 wash-2:defaults=3 wash-3:defaults=3 wash-4:defaults=3
		sensor-shut: wash-1=5 wash-2=5 wash-3=5 wash-4=5
		out-of-sight: wash-1=6 wash-2=6 wash-3=6 wash-4=6
		remote-battery-flat: remote=6
		remote-other-code: remote=3
		fixture-other-code: wash-1=4 wash-2=4 wash-3=4 wash-4=4
		sensor-dead: wash-1=1 wash-2=1 wash-3=1 wash-4=1
		sensor-covered: wash-1=3 wash-2=3 wash-3=3 wash-4=3
		cable-out: cable-1:from=4 cable-1:to=4 cable-2:from=4 cable-2:to=4 cable-3:from=4 cable-3:to=4
		cable-dead: cable-1=4 cable-2=4 cable-3=4
		minus-open: cable-1=3 cable-2=3 cable-3=3
		plus-open: cable-1=3 cable-2=3 cable-3=3
		common-open: cable-1=2 cable-2=2 cable-3=2
		wires-swapped: cable-1=3 cable-2=3 cable-3=3
		microphone-cable: cable-1=4 cable-2=4 cable-3=4
		cable-too-long: cable-1=1 cable-2=1 cable-3=1
		terminator-missing: wash-4:out=6
		bad-socket-in: wash-2=2 wash-3=2 wash-4=2
		bad-socket-out: wash-1=2 wash-2=2 wash-3=2
		too-many-loads: wash-2=1 wash-3=1 wash-4=1
		split-without-splitter: cable-3=3
		emitter-dead: wash-1:red=0.5 wash-1:green=0.5 wash-1:blue=0.5 wash-1:white=0.5 wash-1:amber=0.5 wash-1:ultraviolet=0.5 wash-2:red=0.5 wash-2:green=0.5 wash-2:blue=0.5 wash-2:white=0.5 wash-2:amber=0.5 wash-2:ultraviolet=0.5 wash-3:red=0.5 wash-3:green=0.5 wash-3:blue=0.5 wash-3:white=0.5 wash-3:amber=0.5 wash-3:ultraviolet=0.5 wash-4:red=0.5 wash-4:green=0.5 wash-4:blue=0.5 wash-4:white=0.5 wash-4:amber=0.5 wash-4:ultraviolet=0.5
		receiver-dead: wash-1=2 wash-2=2 wash-3=2 wash-4=2
		folded-back: wash-1=3 wash-2=3 wash-3=3 wash-4=3
		display-dead: wash-1=1 wash-2=1 wash-3=1 wash-4=1
		lens-covered: wash-1=3 wash-2=3 wash-3=3 wash-4=3`,
	'mixed-panels': `
		switched-off: wash-1=6 bar-1=6 old-1=6 old-2=6
		battery-flat: wash-1=8
		battery-low: wash-1=6
		battery-worn: wash-1=3
		mains-unplugged: bar-1=7 old-1=7 old-2=7
		hall-power-off: rig=2
		fuse-blown: bar-1=2 old-1=2 old-2=2
		supply-dead: bar-1=2 old-1=2 old-2=2
		socket-dead: bar-1=2 old-1=2
		lead-dead: bar-1=3 old-1=3 old-2=3
		breaker-off: rig:left=1.5 rig:right=1.5
		wrong-mode: wash-1:short=4.5 wash-1:long=4.5 bar-1:whole=3 bar-1:halves=3 bar-1:cells=3
		wrong-address: wash-1:one-up=3 wash-1:neighbour=3 bar-1:one-up=3 bar-1:default=4
		left-on-held: wash-1:held=8 bar-1:held=8
		left-on-programme: wash-1:fade=7 bar-1:fade=7
		left-on-sound: wash-1:sound=5 bar-1:sound=5
		follower-under-desk: wash-1:follow=5 bar-1:follow=5
		leader-under-desk: wash-1:on=6 bar-1:on=6
		limit-low: wash-1:low=3 bar-1:low=3
		strobe-programme: wash-1:strobe=3 bar-1:strobe=3
		curve-wrong: wash-1:square=2 bar-1:square=2
		loss-set-wrong: wash-1:dark=1 wash-1:programme=1 bar-1:hold=1 bar-1:programme=1
		back-at-defaults: wash-1:defaults=3 bar-1:defaults=3
		one-switch-wrong: old-1:1=3 old-1:4=3 old-1:7=3 old-2:1=3 old-2:4=3 old-2:7=3
		tenth-switch-up: old-1=5 old-2=5
		slide-wrong: old-1:0=2.5 old-1:2=2.5 old-2:0=2.5 old-2:1=2.5
		sensor-shut: wash-1=5
		out-of-sight: wash-1=6
		remote-battery-flat: remote=6
		remote-other-code: remote=3
		fixture-other-code: wash-1=4
		sensor-dead: wash-1=1
		sensor-covered: wash-1=3
		cable-out: cable-1:from=4 cable-1:to=4 cable-2:from=4 cable-2:to=4 cable-3:from=4 cable-3:to=4 cable-4:from=4 cable-4:to=4
		cable-dead: cable-1=4 cable-2=4 cable-3=4 cable-4=4
		minus-open: cable-1=3 cable-2=3 cable-3=3 cable-4=3
		plus-open: cable-1=3 cable-2=3 cable-3=3 cable-4=3
		common-open: cable-1=2 cable-2=2 cable-3=2 cable-4=2
		wires-swapped: cable-1=3 cable-2=3 cable-3=3 cable-4=3
		microphone-cable: cable-1=4 cable-2=4 cable-3=4 cable-4=4
		cable-too-long: cable-1=1 cable-2=1 cable-3=1 cable-4=1
		terminator-missing: old-2:out=6
		bad-socket-in: wash-1=2 bar-1=2 old-1=2 old-2=2
		bad-socket-out: wash-1=2 bar-1=2 old-1=2
		too-many-loads: wash-1=1 bar-1=1 old-1=1 old-2=1
		split-without-splitter: cable-4=3
		output-off: a=3
		master-down: desk:out=3 desk:low=2
		wrong-universe: a=4
		patched-elsewhere: wash-1=6 bar-1=6 old-1=6 old-2=6
		levels-down: wash-1=5 bar-1=5 old-1=5 old-2=5
		wrong-colour-slots: wash-1=4 bar-1=4 old-1=4 old-2=4
		function-left-up: wash-1=6 bar-1=6 old-1=6 old-2=6
		strobe-left-up: bar-1=5 old-1=5
		shutter-closed: bar-1=4
		patched-other-mode: wash-1:short=3 wash-1:long=3 bar-1:whole=2 bar-1:halves=2 bar-1:cells=2 old-1:three=3 old-1:seven=3 old-2:three=3 old-2:five=3
		desk-blind: desk=4
		desk-frozen: desk=1
		start-code-wrong: a=1
		emitter-dead: wash-1:red=0.5 wash-1:green=0.5 wash-1:blue=0.5 wash-1:white=0.5 wash-1:amber=0.5 wash-1:ultraviolet=0.5 bar-1:red=0.75 bar-1:green=0.75 bar-1:blue=0.75 bar-1:warm-white=0.75 old-1:red=1 old-1:green=1 old-1:blue=1 old-2:red=1 old-2:green=1 old-2:blue=1
		receiver-dead: wash-1=2 bar-1=2 old-1=2 old-2=2
		folded-back: wash-1=3 bar-1=3 old-1=3 old-2=3
		display-dead: wash-1=1 bar-1=1
		lens-covered: wash-1=3 bar-1=3 old-1=3 old-2=3
		ultraviolet-alone: wash-1=3`,
};

/** What each fault changes: rig, fault, place and way, then the events. */
export const CHANGES = `
		two-universes switched-off@bar-1 power.switch {bar-1,on:false}
		two-universes mains-unplugged@bar-1 mains.plug {bar-1,into:none}
		two-universes hall-power-off@rig hall.power {on:false}
		two-universes wrong-mode@bar-1:whole settings.become {bar-1,change:{mode:whole}}
		two-universes wrong-mode@bar-1:halves settings.become {bar-1,change:{mode:halves}}
		two-universes wrong-mode@bar-1:cells settings.become {bar-1,change:{mode:cells}}
		two-universes wrong-address@bar-1:one-up settings.become {bar-1,change:{address:2}}
		two-universes wrong-address@bar-1:neighbour settings.become {bar-1,change:{address:10}}
		two-universes wrong-address@bar-2:default settings.become {bar-2,change:{address:1}}
		two-universes left-on-held@bar-1:held settings.become {bar-1,change:{work:held}}
		two-universes left-on-programme@bar-1:fade settings.become {bar-1,change:{work:programme,programme:tide}}
		two-universes left-on-sound@bar-1:sound settings.become {bar-1,change:{work:programme,programme:ear-step}}
		two-universes follower-under-desk@bar-1:follow settings.become {bar-1,change:{work:follow}}
		two-universes leader-under-desk@bar-1:on settings.become {bar-1,change:{work:programme,lead:on,programme:tide}}
		two-universes limit-low@bar-1:low settings.become {bar-1,change:{limit:10}}
		two-universes strobe-programme@bar-1:strobe settings.become {bar-1,change:{work:programme,programme:blink,speed:90}}
		two-universes curve-wrong@bar-1:square settings.become {bar-1,change:{curve:square}}
		two-universes loss-set-wrong@bar-1:hold settings.become {bar-1,change:{loss:hold}}
		two-universes loss-set-wrong@bar-1:programme settings.become {bar-1,change:{loss:programme}}
		two-universes back-at-defaults@bar-2:defaults settings.become {bar-2,change:{work:line,lead:off,address:1,mode:whole-plus,held:warm,programme:tide,speed:40,level:100,strobe:0,loss:dark,curve:soft,limit:100,sensor:open,code:1,hearing:50,lock:off,sleep:20}}
		two-universes cable-out@cable-1:from cable.become {cable:cable-1,change:{from:null}}
		two-universes cable-out@cable-1:to cable.become {cable:cable-1,change:{to:null}}
		two-universes cable-dead@cable-1 cable.become {cable:cable-1,change:{minus:open,plus:open}}
		two-universes minus-open@cable-1 cable.become {cable:cable-1,change:{minus:open}}
		two-universes plus-open@cable-1 cable.become {cable:cable-1,change:{plus:open}}
		two-universes common-open@cable-1 cable.become {cable:cable-1,change:{common:open}}
		two-universes wires-swapped@cable-1 cable.become {cable:cable-1,change:{swapped:true}}
		two-universes microphone-cable@cable-1 cable.become {cable:cable-1,change:{kind:microphone}}
		two-universes cable-too-long@cable-1 cable.become {cable:cable-1,change:{length:600}}
		two-universes terminator-missing@bar-2:out terminator.remove {port:bar-2:out}
		two-universes universes-exchanged@rig cable.become {cable:cable-1,change:{from:desk:b}} ; cable.become {cable:cable-3,change:{from:desk:a}}
		two-universes bad-socket-in@bar-1 condition.become {bar-1,change:{badSocket:in}}
		two-universes bad-socket-out@bar-1 condition.become {bar-1,change:{badSocket:out}}
		two-universes too-many-loads@bar-1 condition.become {bar-1,change:{extraLoads:30}}
		two-universes output-off@a desk.output {output:a,on:false}
		two-universes master-down@desk:out desk.master {level:0}
		two-universes master-down@desk:low desk.master {level:40}
		two-universes wrong-universe@a desk.universe {output:a,universe:11}
		two-universes levels-down@bar-1 desk.level {universe:1,slot:6,level:0} ; desk.level {universe:1,slot:7,level:0}
		two-universes wrong-colour-slots@bar-1 desk.level {universe:1,slot:2,level:0} ; desk.level {universe:1,slot:3,level:120} ; desk.level {universe:1,slot:4,level:60} ; desk.level {universe:1,slot:5,level:200}
		two-universes function-left-up@bar-1 desk.level {universe:1,slot:8,level:35}
		two-universes strobe-left-up@bar-1 desk.level {universe:1,slot:1,level:137}
		two-universes shutter-closed@bar-1 desk.level {universe:1,slot:1,level:3}
		two-universes emitter-dead@bar-1:red condition.become {bar-1,change:{deadEmitters:[red]}}
		two-universes emitter-dead@bar-1:green condition.become {bar-1,change:{deadEmitters:[green]}}
		two-universes emitter-dead@bar-1:blue condition.become {bar-1,change:{deadEmitters:[blue]}}
		two-universes emitter-dead@bar-1:warm-white condition.become {bar-1,change:{deadEmitters:[warm-white]}}
		two-universes receiver-dead@bar-1 condition.become {bar-1,change:{receiverDead:true}}
		two-universes folded-back@bar-1 condition.become {bar-1,change:{foldBack:0.15}}
		two-universes display-dead@bar-1 condition.become {bar-1,change:{displayDead:true}}
		two-universes lens-covered@bar-1 condition.become {bar-1,change:{covered:true}}
		mixed-panels battery-flat@wash-1 charge.become {wash-1,charge:0}
		mixed-panels battery-low@wash-1 charge.become {wash-1,charge:0.08}
		mixed-panels battery-worn@wash-1 condition.become {wash-1,change:{batteryHealth:0.12}}
		mixed-panels wrong-mode@wash-1:short settings.become {wash-1,change:{mode:short}}
		mixed-panels wrong-mode@wash-1:long settings.become {wash-1,change:{mode:long}}
		mixed-panels loss-set-wrong@wash-1:dark settings.become {wash-1,change:{loss:dark}}
		mixed-panels one-switch-wrong@old-1:1 switch.flip {old-1,switch:1,up:false}
		mixed-panels one-switch-wrong@old-1:4 switch.flip {old-1,switch:4,up:true}
		mixed-panels one-switch-wrong@old-1:7 switch.flip {old-1,switch:7,up:true}
		mixed-panels tenth-switch-up@old-1 switch.flip {old-1,switch:10,up:true}
		mixed-panels slide-wrong@old-1:0 slide.move {old-1,slide:mode,to:0}
		mixed-panels slide-wrong@old-1:2 slide.move {old-1,slide:mode,to:2}
		mixed-panels slide-wrong@old-2:1 slide.move {old-2,slide:mode,to:1}
		mixed-panels sensor-shut@wash-1 settings.become {wash-1,change:{sensor:shut}}
		mixed-panels out-of-sight@wash-1 sight.block {wash-1,hidden:true}
		mixed-panels remote-battery-flat@remote remote.become {code:1,battery:false}
		mixed-panels remote-other-code@remote remote.become {code:2,battery:true}
		mixed-panels fixture-other-code@wash-1 settings.become {wash-1,change:{code:2}}
		mixed-panels sensor-dead@wash-1 condition.become {wash-1,change:{sensorDead:true}}
		mixed-panels split-without-splitter@cable-4 cable.become {cable:cable-4,change:{from:wash-1:out}}
		mixed-panels emitter-dead@wash-1:white condition.become {wash-1,change:{deadEmitters:[white]}}
		mixed-panels emitter-dead@wash-1:amber condition.become {wash-1,change:{deadEmitters:[amber]}}
		mixed-panels emitter-dead@wash-1:ultraviolet condition.become {wash-1,change:{deadEmitters:[ultraviolet]}}
		mixed-panels ultraviolet-alone@wash-1 desk.level {universe:1,slot:4,level:0} ; desk.level {universe:1,slot:6,level:0} ; desk.level {universe:1,slot:9,level:255}
		four-in-line sensor-left-open@wash-4 settings.become {wash-4,change:{sensor:open}}
		leader-and-three follower-on-line@wash-2:line settings.become {wash-2,change:{work:line,address:10}}
		leader-and-three leader-not-leading@wash-1:off settings.become {wash-1,change:{lead:off}}
		leader-and-three second-leader@wash-2:on settings.become {wash-2,change:{work:held,lead:on}}
		leader-and-three level-down@wash-1:out settings.become {wash-1,change:{level:0}}
		leader-and-three level-down@wash-1:low settings.become {wash-1,change:{level:5}}
		leader-and-three strobe-left-on@wash-1:strobe settings.become {wash-1,change:{strobe:12}}
		leader-and-three wrong-held@wash-1:candle settings.become {wash-1,change:{held:candle}}
		leader-and-three wrong-held@wash-1:white settings.become {wash-1,change:{held:white}}
		one-wash charger-dead@wash-1 condition.become {wash-1,change:{chargerDead:true}}
		mixed-panels fuse-blown@bar-1 condition.become {bar-1,change:{fuseBlown:true}}
		mixed-panels supply-dead@bar-1 condition.become {bar-1,change:{supplyDead:true}}
		mixed-panels socket-dead@bar-1 condition.become {bar-1,change:{socketDead:true}}
		mixed-panels lead-dead@bar-1 condition.become {bar-1,change:{leadDead:true}}
		mixed-panels breaker-off@rig:left condition.become {bar-1,change:{breakerOff:true}}
		mixed-panels sensor-covered@wash-1 condition.become {wash-1,change:{sensorCovered:true}}
		mixed-panels patched-other-mode@wash-1:short desk.patch {wash-1,universe:1,address:1,mode:short} ; desk.recall {levels:[{universe:1,slot:10,level:40},{universe:1,slot:11,level:200},{universe:1,slot:13,level:120},{universe:1,slot:14,level:60},{universe:1,slot:15,level:255},{universe:1,slot:16,level:255},{universe:1,slot:22,level:255},{universe:1,slot:24,level:200},{universe:1,slot:25,level:255},{universe:1,slot:26,level:255},{universe:1,slot:27,level:120},{universe:1,slot:29,level:255},{universe:1,slot:30,level:255},{universe:1,slot:3,level:255},{universe:1,slot:5,level:110}]}
		mixed-panels desk-blind@desk desk.hold {by:blind}
		mixed-panels desk-frozen@desk desk.hold {by:frozen}
		mixed-panels start-code-wrong@a desk.start-code {output:a,code:23}
		two-universes second-source@cable-1 cable.lay {cable:{id:stray-cable,kind:data,length:10,from:null,to:null,common:sound,minus:sound,plus:sound,swapped:false}} ; cable.become {cable:stray-cable,change:{from:desk:b,to:bar-1:in}}`;

/** What each repair does: rig, repair, place, then the events. */
export const MENDED = `
		two-universes switch-on bar-1 power.switch {bar-1,on:true}
		two-universes plug-mains bar-1 mains.plug {bar-1,into:wall}
		two-universes restore-hall rig hall.power {on:true}
		two-universes set-panel bar-1 settings.become {bar-1,change:{work:line,lead:off,address:1,mode:whole-plus,held:warm,programme:tide,speed:40,level:100,strobe:0,loss:dark,curve:soft,limit:100,sensor:open,code:1,hearing:50,lock:off,sleep:20}}
		two-universes plug-cable cable-1 cable.become {cable:cable-1,change:{from:desk:a,to:bar-1:in}}
		two-universes replace-cable cable-1 cable.become {cable:cable-1,change:{kind:data,length:20,common:sound,minus:sound,plus:sound,swapped:false}}
		two-universes fit-terminator bar-2:out terminator.fit {port:bar-2:out}
		two-universes right-way-round rig cable.become {cable:cable-1,change:{from:desk:a,to:bar-1:in}} ; cable.become {cable:cable-2,change:{from:bar-1:out,to:bar-2:in}} ; cable.become {cable:cable-3,change:{from:desk:b,to:bar-3:in}} ; cable.become {cable:cable-4,change:{from:bar-3:out,to:bar-4:in}}
		two-universes output-on a desk.output {output:a,on:true}
		two-universes raise-master desk desk.master {level:255}
		two-universes set-universe a desk.universe {output:a,universe:1}
		two-universes set-patch bar-1 desk.patch {bar-1,universe:1,address:1,mode:whole-plus} ; desk.level {universe:1,slot:1,level:40} ; desk.level {universe:1,slot:2,level:200} ; desk.level {universe:1,slot:3,level:0} ; desk.level {universe:1,slot:4,level:120} ; desk.level {universe:1,slot:5,level:60} ; desk.level {universe:1,slot:6,level:255} ; desk.level {universe:1,slot:7,level:255} ; desk.level {universe:1,slot:8,level:0} ; desk.level {universe:1,slot:9,level:0} ; desk.level {universe:1,slot:1,level:40} ; desk.level {universe:1,slot:2,level:200} ; desk.level {universe:1,slot:3,level:0} ; desk.level {universe:1,slot:4,level:120} ; desk.level {universe:1,slot:5,level:60} ; desk.level {universe:1,slot:6,level:255} ; desk.level {universe:1,slot:7,level:255} ; desk.level {universe:1,slot:8,level:0} ; desk.level {universe:1,slot:9,level:0}
		two-universes set-levels bar-1 desk.level {universe:1,slot:1,level:40} ; desk.level {universe:1,slot:2,level:200} ; desk.level {universe:1,slot:3,level:0} ; desk.level {universe:1,slot:4,level:120} ; desk.level {universe:1,slot:5,level:60} ; desk.level {universe:1,slot:6,level:255} ; desk.level {universe:1,slot:7,level:255} ; desk.level {universe:1,slot:8,level:0} ; desk.level {universe:1,slot:9,level:0}
		two-universes let-cool bar-1 condition.become {bar-1,change:{foldBack:1}}
		two-universes clear-lens bar-1 condition.become {bar-1,change:{covered:false}}
		mixed-panels fresh-battery wash-1 charge.become {wash-1,charge:1}
		mixed-panels set-switches old-1 switch.flip {old-1,switch:1,up:true} ; switch.flip {old-1,switch:2,up:false} ; switch.flip {old-1,switch:3,up:true} ; switch.flip {old-1,switch:4,up:false} ; switch.flip {old-1,switch:5,up:true} ; switch.flip {old-1,switch:6,up:false} ; switch.flip {old-1,switch:7,up:false} ; switch.flip {old-1,switch:8,up:false} ; switch.flip {old-1,switch:9,up:false} ; switch.flip {old-1,switch:10,up:false} ; slide.move {old-1,slide:mode,to:1} ; slide.move {old-1,slide:loss,to:0} ; slide.move {old-1,slide:curve,to:0}
		mixed-panels open-sensor wash-1 settings.become {wash-1,change:{sensor:open}}
		mixed-panels clear-sight wash-1 sight.block {wash-1,hidden:false}
		mixed-panels remote-battery remote remote.become {code:1,battery:true}
		mixed-panels remote-code remote remote.become {code:1,battery:true}
		two-universes swap-fixture bar-1 condition.become {bar-1,change:{deadEmitters:[],foldBack:1,covered:false,receiverDead:false,badSocket:null,extraLoads:0,sensorDead:false,microphoneDead:false,displayDead:false,batteryHealth:1,chargerDead:false,fuseBlown:false,supplyDead:false,sensorCovered:false}} ; settings.become {bar-1,change:{work:line,lead:off,address:1,mode:whole-plus,held:warm,programme:tide,speed:40,level:100,strobe:0,loss:dark,curve:soft,limit:100,sensor:open,code:1,hearing:50,lock:off,sleep:20}}
		two-universes other-socket bar-1 condition.become {bar-1,change:{socketDead:false}}
		two-universes replace-lead bar-1 condition.become {bar-1,change:{leadDead:false}}
		two-universes ask-breaker rig condition.become {bar-1,change:{breakerOff:false}} ; condition.become {bar-3,change:{breakerOff:false}}
		boxed box-on fan box.switch {box:fan,on:true}
		boxed other-output fan box.output {box:fan,socket:1,dead:false} ; box.output {box:fan,socket:2,dead:false} ; box.output {box:fan,socket:3,dead:false} ; box.output {box:fan,socket:4,dead:false}
		two-universes lift-stray cable-1
		two-universes leave-blind desk desk.hold {by:null}
		two-universes restart-desk desk desk.hold {by:null}
		two-universes set-start-code a desk.start-code {output:a,code:0}
		two-universes clear-sensor bar-1 condition.become {bar-1,change:{sensorCovered:false}}`;
