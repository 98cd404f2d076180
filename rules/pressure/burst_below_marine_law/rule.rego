# METADATA
# title: A marine hose bursts below four times the highest pressure
# description: |
#   The US rule for oil and hazardous material between vessel and shore wants a burst pressure of four
#   times the relief setting, or the highest pump pressure, with the static head added.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 154.500"]
#   needs: [hoses.burst_kpa]
#   absent: [capacities.demand_kpa]
#   message: >-
#     {part} bursts at {have_kpa}; the law asks for {need_kpa}, four times the highest pressure of the
#     line
#   action: "Fit a hose with a higher burst pressure, or lower the relief setting."
#   basis:
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(a)"
#       standing: published
package rules.pressure.burst_below_marine_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.burst_kpa, "need_kpa": 4 * top} if {
	"33 CFR 154.500" in input.line.regimes
	some h in input.hoses
	top := max({c.demand_kpa | some c in input.capacities; c.is_hose; c.part == h.id})

	# Both figures are rounded to the safe side; a hose of exactly 4 times the pressure is not held against that.
	h.burst_kpa + 1 <= 4 * (top - 1)
}
