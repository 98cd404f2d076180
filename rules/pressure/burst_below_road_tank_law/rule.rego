# METADATA
# title: A hose of a low-pressure road tank bursts below what the law asks
# description: |
#   The US rule for road tanks of the low-pressure kinds wants a burst pressure of four times the
#   pressure of the tank, and never less than 100 psig.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=49 CFR 178.345-9"]
#   needs: [hoses.burst_kpa]
#   absent: [vessels.kind, vessels.rated_kpa]
#   message: "{part} bursts at {have_kpa}; the road tank rule asks for {need_kpa}"
#   action: "Fit a hose with a higher burst pressure."
#   basis:
#     - document: 49 CFR 178.345-9
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
package rules.pressure.burst_below_road_tank_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.burst_kpa, "need_kpa": least} if {
	"49 CFR 178.345-9" in input.line.regimes
	some h in input.hoses
	least := max(_tanks | {_floor_kpa})
	h.burst_kpa < least
}

_tanks := {least | some v in input.vessels; v.kind == "tanker"; least := 4 * v.rated_kpa}

# 100 psig = 689.5 kPa, rounded down like the figure it is compared with.
_floor_kpa := 689
