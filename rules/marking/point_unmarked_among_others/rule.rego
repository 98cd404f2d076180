# METADATA
# title: A receiving point without a label stands where another can be mistaken for it
# description: |
#   In a published accident two unlabelled fill points stood half a metre apart; the driver took the
#   wrong one.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: points
#   scope: []
#   needs: [points.marked]
#   absent: [points.hazardous]
#   message: >-
#     {point} of {vessel} carries no label, where a mistake is near: another point is in reach or its
#     contents react
#   action: "Label every receiving point in reach with the full name of its fluid before the hose is brought out."
#   basis:
#     - document: CSB case study, mixed chemicals at a Kansas plant in 2016
#       edition: "January 2018"
#       clause: "whole text"
#       standing: published
package rules.marking.point_unmarked_among_others

report contains {"subject": p.id, "point": p.id, "vessel": p.vessel} if {
	some p in input.points
	p.marked == false
	_mistakable(p)
}

_mistakable(p) if not p.target

_mistakable(p) if p.neighbours_stated

_mistakable(p) if p.hazardous == true
