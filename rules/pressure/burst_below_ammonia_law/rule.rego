# METADATA
# title: An ammonia hose bursts below what the law asks
# description: |
#   The US ammonia rule fixes a least burst pressure for every hose that is under the container's
#   pressure, five times its least working pressure.
#   A hose behind a regulator has a rule of its own.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "!low_side", "regime=29 CFR 1910.111"]
#   needs: [hoses.burst_kpa]
#   message: "{part} bursts at {have_kpa}; the law asks for {need_kpa} on ammonia under container pressure"
#   action: "Fit a hose made and marked for anhydrous ammonia with at least this burst pressure."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(ii)"
#       standing: published
package rules.pressure.burst_below_ammonia_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.burst_kpa,
	"need_kpa": _least,
} if {
	"29 CFR 1910.111" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	not h.low_side
	h.burst_kpa < _least
}

# 1750 psig = 12065.8 kPa, rounded down like the figure it is compared with.
_least := 12065
