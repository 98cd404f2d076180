# METADATA
# title: More than one hose between ship and shore has an insulating break
# description: |
#   The law asks for exactly one insulating length between ship and shore. Metal between two of them is
#   joined to neither side and charges.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 154.2101"]
#   needs: [hoses.electrical_grade]
#   message: "{part} has an insulating break, and so has another hose of run {run}"
#   action: "Keep one insulating hose or flange, and join every other part to its own side."
#   basis:
#     - document: 33 CFR 154.2101
#       edition: "CFR 2015 annual edition"
#       clause: "(g)"
#       standing: published
package rules.static.second_insulating_length

report contains {"subject": h.id, "part": h.id, "run": h.run} if {
	"33 CFR 154.2101" in input.line.regimes
	some h in input.hoses
	h.electrical_grade == "discontinuous"
	count(_insulating(h.run)) > 1
}

_insulating(run) := {h.id |
	some h in input.hoses
	h.run == run
	h.electrical_grade == "discontinuous"
}
