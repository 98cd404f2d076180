# METADATA
# title: A dangerous receiving point takes the same coupling
# description: |
#   The hose reaches a point that it fits and that must never receive this fluid. The sheet may name the
#   right point; the hands on the day may take the other. A padlock lowers this to a condition, if the
#   sheet states one.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: points
#   scope: ["!target", "!keyed", "line.hazard_in_reach"]
#   needs: [points.hazardous, points.coupling]
#   absent: [points.padlocked]
#   message: >-
#     {point} is in reach, takes the same coupling, is not known to be padlocked, and its contents react:
#     {outcome}
#   action: >-
#     Give each fluid a coupling or key of its own. Until then padlock this point and let the receiver
#     hold the key.
#   basis:
#     - document: CSB case study, mixed chemicals at a Kansas plant in 2016
#       edition: "January 2018"
#       clause: "whole text"
#       standing: published
package rules.isolation.same_coupling_in_reach

report contains {"subject": p.id, "point": p.id, "vessel": p.vessel, "outcome": _outcome(p)} if {
	input.line.hazard_in_reach
	some p in input.points
	not p.target
	p.hazardous == true
	p.coupling == "same"
	not p.keyed

	# A padlock that nobody has stated is not counted.
	not p.padlocked
}

_outcome(p) := p.product if count(p.product) > 0

_outcome(p) := "a dangerous reaction" if count(p.product) == 0
