# METADATA
# title: A road delivery hose does not show its working pressure
# description: |
#   The US road rule wants the highest working pressure and an identity of its own on every delivery
#   hose for liquefied gas.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_liquefied_gas, "regime=49 CFR 180.416"]
#   needs: [hoses.marked_pressure]
#   message: "{part} does not show its working pressure, which the road rule asks for"
#   action: "Do not deliver with the hose until it is marked with identity and working pressure."
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
package rules.marking.road_hose_pressure_not_marked

report contains {"subject": h.id, "part": h.id} if {
	"49 CFR 180.416" in input.line.regimes
	some h in input.hoses
	h.carries_liquefied_gas
	h.marked_pressure == false
}
