# METADATA
# title: A gas ship hose does not show its working pressure
# description: |
#   The US rule for liquefied flammable gas on ships wants the working pressure on the hose, and the
#   lowest temperature where the gas is refrigerated.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 38.15-5"]
#   needs: [hoses.marked_pressure]
#   message: "{part} does not show its working pressure, which the ship rule asks for"
#   action: "Do not use the hose until its maker or assembler has marked it."
#   basis:
#     - document: 46 CFR 38.15-5
#       edition: "undated public copy"
#       clause: "whole section"
#       standing: published
package rules.marking.gas_ship_pressure_not_marked

report contains {"subject": h.id, "part": h.id} if {
	"46 CFR 38.15-5" in input.line.regimes
	some h in input.hoses
	h.marked_pressure == false
}
