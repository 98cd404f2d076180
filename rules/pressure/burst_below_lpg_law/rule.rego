# METADATA
# title: An LP-gas hose bursts below what the law asks
# description: |
#   The US LP-gas rule fixes a least burst pressure for every hose that is under the container's
#   pressure.
#   A hose behind a regulator has a rule of its own.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_lpg, "!low_side", "regime=29 CFR 1910.110"]
#   needs: [hoses.burst_kpa]
#   message: "{part} bursts at {have_kpa}; the law asks for {need_kpa} on LP-gas under container pressure"
#   action: "Fit a listed LP-gas hose with at least this burst pressure."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(9)(iii)"
#       standing: published
package rules.pressure.burst_below_lpg_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.burst_kpa,
	"need_kpa": _least,
} if {
	"29 CFR 1910.110" in input.line.regimes
	some h in input.hoses
	h.carries_lpg
	not h.low_side
	h.burst_kpa < _least
}

# 1250 psig = 8618.4 kPa, rounded down like the figure it is compared with.
_least := 8618
