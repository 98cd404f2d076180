# METADATA
# title: A waterfront gas hose does not show its working pressure
# description: |
#   The US rule for liquefied hazardous gas at the waterfront wants a plate with each gas, the working
#   pressure at the temperature of service, and the lowest temperature of service.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_liquefied_gas, "regime=33 CFR 127.1102"]
#   needs: [hoses.marked_pressure]
#   message: "{part} does not show its working pressure, which the waterfront rule asks for"
#   action: >-
#     Do not use the hose until its maker or assembler has fixed a plate with gases, pressure and lowest
#     temperature.
#   basis:
#     - document: 33 CFR 127.1102
#       edition: "CFR 2015 annual edition"
#       clause: "(a)"
#       standing: published
package rules.marking.waterfront_gas_pressure_not_marked

report contains {"subject": h.id, "part": h.id} if {
	"33 CFR 127.1102" in input.line.regimes
	some h in input.hoses
	h.carries_liquefied_gas
	h.marked_pressure == false
}
