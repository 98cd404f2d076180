# METADATA
# title: The gas that pushes chlorine is supplied above three quarters of the tank's pressure
# description: |
#   US marine law keeps the supply of the padding gas, and not only its regulator, below what the
#   chlorine tank may see.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [padded, holds_chlorine, "regime=46 CFR 151.50-31"]
#   needs: [vessels.supply_kpa, vessels.rated_kpa]
#   message: >-
#     The padding gas is supplied at {supply_kpa}; the law allows 75 % of the {rated_kpa} that {part} may
#     see
#   action: "Use a supply that cannot give more than this, with gas that is dry and free of oil."
#   basis:
#     - document: 46 CFR 151.50-31
#       edition: "CFR 2015 annual edition"
#       clause: "(n)(5)"
#       standing: published
package rules.service.chlorine_pad_above_75_percent

report contains {
	"subject": v.id,
	"part": v.id,
	"supply_kpa": v.supply_kpa,
	"rated_kpa": v.rated_kpa,
} if {
	"46 CFR 151.50-31" in input.line.regimes
	some v in input.vessels
	v.padded
	v.holds_chlorine

	# Multiplied out, so that nothing is rounded.
	v.supply_kpa * 100 > v.rated_kpa * 75
}
