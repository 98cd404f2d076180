# METADATA
# title: A regulator is set above the highest pressure of its supply
# description: |
#   A regulator cannot give more than it gets. Mostly the setting or the supply is mistyped, or the
#   supply is not the one meant.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: regulators
#   scope: []
#   needs: []
#   absent: [regulators.set_kpa, regulators.source_kpa]
#   message: "Regulator {part} is set to {set_kpa}, and its supply reaches {source_kpa} at most"
#   action: "Check the setting and the supply against each other."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.regulator_set_above_source

report contains {
	"subject": r.id,
	"part": r.id,
	"set_kpa": r.set_kpa,
	"source_kpa": r.source_kpa,
} if {
	some r in input.regulators
	r.set_kpa > r.source_kpa
}
