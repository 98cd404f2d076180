# METADATA
# title: A road tank of hazardous liquefied gas has no shut-off that works by itself
# description: |
#   The US road rule wants a device that closes within twenty seconds when a delivery hose parts,
#   without anybody doing anything, for flammable and toxic gases and ammonia. Smaller metered
#   deliveries have a choice.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: [carries_liquefied_gas, "!passive_shutoff", "regime=49 CFR 173.315"]
#   needs: []
#   message: "Nothing in the line closes by itself when the hose parts"
#   action: >-
#     Fit a passive shut-off at the tank or in the hose, or show that the delivery is one the rule
#     exempts.
#   basis:
#     - document: 49 CFR 173.315
#       edition: "CFR 2015 annual edition"
#       clause: "(n)(1)-(2)"
#       standing: published
package rules.isolation.road_gas_without_passive_shutoff

report contains {"subject": "line"} if {
	"49 CFR 173.315" in input.line.regimes
	input.line.carries_liquefied_gas
	not input.line.passive_shutoff
	some f in input.fluids
	f.form == "liquefied-gas"
	_hazardous(f)
}

_hazardous(f) if f.flammable

_hazardous(f) if f.toxic
