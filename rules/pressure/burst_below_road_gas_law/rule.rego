# METADATA
# title: A hose of a liquefied gas road tank bursts below four times the highest pressure
# description: |
#   The US rule for liquefied gas road tanks wants four times the design pressure of the tank, or four
#   times any higher pressure in service. Five times is the rule at the waterfront and for ships.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=49 CFR 178.337-9"]
#   needs: [hoses.burst_kpa]
#   absent: [capacities.demand_kpa, vessels.kind, vessels.rated_kpa]
#   message: >-
#     {part} bursts at {have_kpa}; the road tank rule asks for {need_kpa}, four times the highest pressure
#     of tank or line
#   action: "Fit a hose with a higher burst pressure."
#   basis:
#     - document: 49 CFR 178.337-9
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(1)"
#       standing: published
package rules.pressure.burst_below_road_gas_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.burst_kpa, "need_kpa": 4 * top} if {
	"49 CFR 178.337-9" in input.line.regimes
	some h in input.hoses
	top := max(_pressures(h))

	# Both figures are rounded; a hose of exactly four times the pressure is not held against that.
	h.burst_kpa + 1 <= 4 * (top - 1)
}

_pressures(h) := {c.demand_kpa | some c in input.capacities; c.is_hose; c.part == h.id} | _tanks

_tanks := {v.rated_kpa | some v in input.vessels; v.kind == "tanker"}
