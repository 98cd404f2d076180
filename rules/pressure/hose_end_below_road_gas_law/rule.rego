# METADATA
# title: The coupling of a road gas hose is not stronger than the hose
# description: |
#   The US rule for liquefied gas road tanks wants the coupling of a hose made for 120 % of the pressure
#   of the hose, so that the hose gives way before its end lets go.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: capacities
#   scope: ["what=end", "regime=49 CFR 178.337-9"]
#   needs: [capacities.rated_kpa]
#   absent: [hoses.rated_kpa]
#   message: >-
#     The coupling of {part} holds {end_kpa} and the hose {hose_kpa}; the road tank rule asks for 120 % of
#     the hose
#   action: "Fit hose couplings of a higher rating, or mark the hose down."
#   basis:
#     - document: 49 CFR 178.337-9
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(3)"
#       standing: published
package rules.pressure.hose_end_below_road_gas_law

report contains {
	"subject": c.id,
	"part": c.part,
	"end_kpa": c.rated_kpa,
	"hose_kpa": h.rated_kpa,
} if {
	"49 CFR 178.337-9" in input.line.regimes
	some c in input.capacities
	c.what == "end"
	some h in input.hoses
	h.id == c.part

	# At least six fifths, written without a fraction; the rounding of both figures is not held against it.
	5 * (c.rated_kpa + 1) <= 6 * h.rated_kpa
}
