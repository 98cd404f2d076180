# METADATA
# title: A gauge works outside the middle of its range
# description: |
#   Near the bottom of its range the error of a gauge is a large part of the reading; near the top it
#   wears and has nothing left for a surge.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: gauges
#   scope: []
#   needs: [gauges.duty_share_permille]
#   message: "{part} shows {have_permille} of its range at duty, {side} {need_permille}"
#   action: >-
#     Fit a gauge whose range puts the duty pressure between a quarter and three quarters of the scale.
#   basis:
#     - document: EN 837-2
#       edition: ""
#       clause: "choice of range"
#       standing: recalled
#     - document: ASME B40.100
#       edition: ""
#       clause: "accuracy grades"
#       standing: recalled
package rules.flow.gauge_outside_its_middle

report contains {
	"subject": g.id,
	"part": g.id,
	"side": "below",
	"have_permille": g.duty_share_permille,
	"need_permille": _low,
} if {
	some g in input.gauges
	g.duty_share_permille < _low
}

report contains {
	"subject": g.id,
	"part": g.id,
	"side": "above",
	"have_permille": g.duty_share_permille,
	"need_permille": _high,
} if {
	some g in input.gauges
	g.duty_share_permille > _high
}

_low := 250

_high := 750
