# METADATA
# title: A marine hose lacks a mark that the law asks for
# description: |
#   The US rule for oil and hazardous material between vessel and shore wants working pressure and date
#   of manufacture on the hose. The date may stand in the records if the hose has an identity.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 154.500"]
#   needs: [hoses.marked_pressure, hoses.marked_year]
#   message: "{part} does not show: {missing}"
#   action: "Do not use the hose until its maker or assembler has marked it."
#   basis:
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(e)-(f)"
#       standing: published
package rules.marking.marine_marks_incomplete

report contains {"subject": h.id, "part": h.id, "missing": concat(", ", missing)} if {
	"33 CFR 154.500" in input.line.regimes
	some h in input.hoses
	missing := {mark | some mark in {"working pressure", "year made"}; _lacks(h, mark)}
	count(missing) > 0
}

_lacks(h, "working pressure") if h.marked_pressure == false

_lacks(h, "year made") if {
	h.marked_year == false
	not h.assigned_stated
}
