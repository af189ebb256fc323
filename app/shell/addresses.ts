/** Where things lie in the app. A link to something that is gone still opens its place, which says so. */

export const addressOfGame = (gameId: string) => `/film/${gameId}`;
export const addressOfMoment = (gameId: string, momentId: string) => `/film/${gameId}?moment=${momentId}`;
export const addressOfFreeze = (gameId: string, freezeId: string) => `/film/${gameId}?freeze=${freezeId}`;
export const addressOfHabit = (habitId: string) => `/habits/${habitId}`;
export const addressOfDrill = (drillId: string) => `/drills/${drillId}`;
export const addressOfPractice = (practiceId: string) => `/practices/${practiceId}`;
/** The block that was put in, open beside the plan. */
export const addressOfBlock = (practiceId: string, blockId: string) =>
  `${addressOfPractice(practiceId)}?block=${blockId}`;
export const addressOfMeeting = (meetingId: string) => `/film/meeting/${meetingId}`;
/** What the speaker has before him, and what the audience sees. */
export const addressOfSpeaking = (meetingId: string) => `${addressOfMeeting(meetingId)}/speak`;
export const addressOfShowing = (meetingId: string) => `${addressOfMeeting(meetingId)}/show`;
export const addressOfMeetingSheet = (meetingId: string) => `${addressOfMeeting(meetingId)}/sheet`;
export const addressOfCard = (practiceId: string) => `/practices/${practiceId}/card`;
