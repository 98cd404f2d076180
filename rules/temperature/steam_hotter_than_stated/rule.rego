# METADATA
# title: Steam is hotter than the sheet says
# description: |
#   Saturated steam has the heat of its pressure. Every part was judged at the heat the sheet states, so steam
#   of a higher pressure makes those answers worthless.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: steams
#   scope: []
#   needs: [steams.saturated_ck, steams.stated_ck, steams.pressure_kpa]
#   message: "Steam of {pressure_kpa} in {run} is {need_ck} hot; the sheet states {have_ck}"
#   action: >-
#     State the highest temperature of the steam as its supply gives it, or hold the supply lower.
#   basis:
#     - document: IAPWS R7-97
#       edition: "2012"
#       clause: "equation 31"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.steam_hotter_than_stated

report contains {
	"subject": s.id,
	"run": s.run,
	"case": "steam-out",
	"pressure_kpa": s.pressure_kpa,
	"have_ck": s.stated_ck,
	"need_ck": s.saturated_ck,
} if {
	some s in input.steams
	s.saturated_ck > s.stated_ck + _rounding_ck
}

# Temperatures are stated to the degree.
_rounding_ck := 100
