# METADATA
# title: A part can get colder than it may
# description: |
#   Below its lowest temperature rubber and plastic turn brittle and some steels break without warning.
#   Liquefied gas chills the line when pressure is let off.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: limits
#   scope: ["!is_seal"]
#   needs: [limits.lowest_ck, limits.coldest_ck]
#   message: "{part} ({what}) is good down to {have_ck} but can reach {need_ck}"
#   action: "Fit a part made for this cold, or keep the pressure from falling so fast that the liquid boils."
#   basis:
#     - document: EN 12115
#       edition: "2021"
#       clause: "scope"
#       standing: published
#     - document: EN 14420-7
#       edition: "2022 final draft"
#       clause: "scope"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.below_limit

report contains {"subject": l.id, "part": l.part, "what": l.what, "have_ck": l.lowest_ck, "need_ck": l.coldest_ck} if {
	some l in input.limits
	not l.is_seal
	l.lowest_ck > l.coldest_ck
}
