# METADATA
# title: A flange at a hose has too few bolts for the marine law
# description: |
#   Between vessel and shore the US rule for oil and hazardous material lets a temporary joint of
#   class flanges go with a bolt in every other hole, and never fewer than four.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: [bolts_in_question, class_flange, at_hose, "regime=33 CFR 156.130"]
#   needs: [joints.bolts, joints.bolt_holes]
#   message: >-
#     The joint of {a} and {b} has {bolts_count} bolts for {holes_count} holes; the law asks for
#     every other hole, and for four
#   action: "Fit bolts of the right size, best in every hole, and tighten them evenly."
#   basis:
#     - document: 33 CFR 156.130
#       edition: "CFR 2015 annual edition"
#       clause: "bolting"
#       standing: published
package rules.connection.bolts_below_marine_law

report contains {
	"subject": j.id,
	"a": j.a,
	"b": j.b,
	"bolts_count": j.bolts,
	"holes_count": j.bolt_holes,
} if {
	"33 CFR 156.130" in input.line.regimes
	some j in input.joints
	j.bolts_in_question
	j.class_flange
	j.at_hose
	_too_few(j)
}

_too_few(j) if 2 * j.bolts < j.bolt_holes

_too_few(j) if j.bolts < 4
