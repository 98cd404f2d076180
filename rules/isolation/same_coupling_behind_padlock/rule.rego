# METADATA
# title: Only a padlock keeps the hose off a dangerous receiving point
# description: |
#   A padlock works while people use it: keys are lent, and locks are left open.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: points
#   scope: ["!target", "!keyed", "line.hazard_in_reach"]
#   needs: [points.hazardous, points.coupling]
#   absent: [points.padlocked]
#   message: >-
#     {point} is in reach and takes the same coupling; a padlock alone keeps this fluid out, and its
#     contents react: {outcome}
#   action: >-
#     Have the receiver check lock and key before the hose is brought out. Plan for a coupling or key of
#     its own.
#   basis:
#     - document: CSB case study, mixed chemicals at a Kansas plant in 2016
#       edition: "January 2018"
#       clause: "whole text"
#       standing: published
package rules.isolation.same_coupling_behind_padlock

report contains {"subject": p.id, "point": p.id, "vessel": p.vessel, "outcome": _outcome(p)} if {
	input.line.hazard_in_reach
	some p in input.points
	not p.target
	p.hazardous == true
	p.coupling == "same"
	not p.keyed
	p.padlocked == true
}

_outcome(p) := p.product if count(p.product) > 0

_outcome(p) := "a dangerous reaction" if count(p.product) == 0
