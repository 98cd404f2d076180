# METADATA
# title: A gas ship hose bursts below five times the highest pressure
# description: |
#   The US rule for liquefied flammable gas on ships wants a burst pressure of five times the highest
#   relief setting of tank, pump or compressor.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 38.15-5"]
#   needs: [hoses.burst_kpa]
#   absent: [capacities.demand_kpa]
#   message: >-
#     {part} bursts at {have_kpa}; the ship rule asks for {need_kpa}, five times the highest pressure of
#     the line
#   action: "Fit a hose with a higher burst pressure, or lower the relief setting."
#   basis:
#     - document: 46 CFR 38.15-5
#       edition: "undated public copy"
#       clause: "whole section"
#       standing: published
package rules.pressure.burst_below_gas_ship_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.burst_kpa, "need_kpa": 5 * top} if {
	"46 CFR 38.15-5" in input.line.regimes
	some h in input.hoses
	top := max({c.demand_kpa | some c in input.capacities; c.is_hose; c.part == h.id})

	# Both figures are rounded to the safe side; a hose of exactly 5 times the pressure is not held against that.
	h.burst_kpa + 1 <= 5 * (top - 1)
}
