# METADATA
# title: An ammonia hose behind a regulator bursts below what the law asks
# description: |
#   Behind a flow control or pressure reducing valve the US rule asks for a burst pressure of five
#   times the setting of the relief device that protects that stretch, and 125 psig at least. The
#   same hose need not be one for the container's pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, low_side, "regime=29 CFR 1910.111"]
#   needs: [hoses.burst_kpa, hoses.low_side_relief_kpa]
#   message: "{part} bursts at {have_kpa}; the law asks for {need_kpa} behind this regulator"
#   action: "Fit a hose with at least this burst pressure, or a relief device with a lower setting."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(iii)"
#       standing: published
package rules.pressure.low_side_burst_below_ammonia_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.burst_kpa,
	"need_kpa": need,
} if {
	"29 CFR 1910.111" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	h.low_side
	need := max([_least, 5 * h.low_side_relief_kpa])
	h.burst_kpa < need
}

# 125 psig = 861.8 kPa, rounded down like the figure it is compared with.
_least := 861
