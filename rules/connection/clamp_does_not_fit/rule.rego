# METADATA
# title: A clamp is not made for the outside diameter of the hose
# description: |
#   Clamps grip only within the range stamped on them. Under it the halves meet before they hold the
#   hose, over it they cut in or do not close. The outside diameter of a hose of one bore differs by
#   class and maker.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: tails
#   scope: [clamp_stated]
#   needs: [tails.outside_um, tails.clamp_least_um, tails.clamp_most_um]
#   message: "{part} is {outside_um} outside; its clamps are for {least_um} to {most_um}"
#   action: >-
#     Have the hose made up again with clamps whose range holds its measured outside diameter, and
#     tested.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.clamp_does_not_fit

report contains {
	"subject": t.id,
	"part": t.id,
	"outside_um": t.outside_um,
	"least_um": t.clamp_least_um,
	"most_um": t.clamp_most_um,
} if {
	some t in input.tails
	t.clamp_stated
	_outside_range(t)
}

_outside_range(t) if t.outside_um < t.clamp_least_um

_outside_range(t) if t.outside_um > t.clamp_most_um
