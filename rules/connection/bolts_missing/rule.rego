# METADATA
# title: A flange has fewer bolts than holes
# description: |
#   The joint holds what its class says only with a bolt in every hole. The count is asked for where
#   toxic, liquefied or deeply cold fluid would come out, and judged wherever the sheet states it.
#   The rule for oil and hazardous material between vessel and shore leaves every other hole of a
#   class flange at a hose open, and is judged apart. DN 65 PN 10 and PN 16 are drilled with eight
#   holes today and were once with four.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: [bolts_in_question]
#   needs: [joints.bolts, joints.bolt_holes]
#   message: "The joint of {a} and {b} has {have_count} bolts; its drilling has {need_count} holes"
#   action: >-
#     Take the joint apart, look at faces and gasket, and make it up with a sound bolt of the right
#     size in every hole.
#   basis:
#     - document: 33 CFR 156.130
#       edition: "CFR 2015 annual edition"
#       clause: "bolting"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.bolts_missing

report contains {
	"subject": j.id,
	"a": j.a,
	"b": j.b,
	"have_count": j.bolts,
	"need_count": j.bolt_holes,
} if {
	some j in input.joints
	j.bolts_in_question
	j.bolts < j.bolt_holes
	not _left_open_by_law(j)
}

_left_open_by_law(j) if {
	"33 CFR 156.130" in input.line.regimes
	j.class_flange
	j.at_hose
}
